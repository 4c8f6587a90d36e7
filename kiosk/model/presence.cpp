#include <fmt/format.h>

#include "core/cover/cover_rules.hpp"
#include "kiosk/model/permission.hpp"
#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

// Clocks are put right by seconds while a program runs; set back further, they say nothing about
// how long ago something was, and the safer guess is: long.
constexpr std::chrono::minutes clock_slack{1};

bool past(const std::optional<Moment>& since, const Stamp& stamp, std::chrono::minutes lasts) {
  if (!since) return false;
  const auto elapsed = stamp.now.utc - since->utc;
  return elapsed >= lasts || elapsed < -clock_slack;
}

Effects comes(const std::string& name, Arrival how, const Stamp& stamp) {
  return {SaveDrafts{{draft_now(name, stamp, PersonCame{name, how})}}};
}

// A keeper's days are all days.
std::string why_not_today(const Model& model, const Person& person, const Stamp& stamp) {
  if (person.role == Role::Keeper) return {};
  return not_your_days(model.cover, person, stamp.now.day(), model.settings.wording.dates);
}

}  // namespace

void take_people(Model& model, const People& people) {
  const bool first = !model.roster_known;
  model.people = people;
  if (!first) return;
  if (!people.nobody()) step_aside(model);
  // A first start: whoever begins here says who they are, or goes back and does it later.
  const bool fresh = people.nobody() && model.collection.enclosures.empty();
  if (fresh && model.screen == ScreenName::Round) go_to(model, ScreenName::People);
}

void note_presence(Model& model, const Stamp& stamp) {
  if (past(model.last_seen, stamp, idle_return) || past(model.pin_given, stamp, pin_lasts))
    model.pin_given.reset();
  if (past(model.last_seen, stamp, presence_lasts) && !model.people.nobody()) step_aside(model);
  model.last_seen = stamp.now;
}

Effects on_badge(Model& model, const Code& badge, const Stamp& stamp) {
  if (model.people.nobody() || model.people.with_badge(badge) != nullptr)
    return welcome(model, badge, stamp);
  // Another program may have added them since: a cover that was planned at a desk.
  model.awaited = badge;
  return {LoadRoster{}};
}

Effects welcome(Model& model, const Code& badge, const Stamp& stamp) {
  if (model.people.nobody()) {
    tell(model, Tone::Tell,
         "Nobody is set up to work here yet: that is in the drawer, under people.");
    return {};
  }
  const auto person = person_with_badge(model.people, badge, stamp.now.day());
  if (!person) {
    tell(model, Tone::Problem, person.error().sentence);
    return {};
  }
  if (const auto reason = why_not_today(model, *person, stamp); !reason.empty()) {
    tell(model, Tone::Problem, reason);
    return {};
  }
  return comes(person->name, Arrival::Badge, stamp);
}

Effects pick_person(Model& model, const std::string& name, const Stamp& stamp) {
  const Person* person = model.people.named(name);
  if (person == nullptr || badge_state(*person, stamp.now.day()) != BadgeState::Open) return {};
  if (const auto reason = why_not_today(model, *person, stamp); !reason.empty()) {
    tell(model, Tone::Problem, reason);
    return {};
  }
  return comes(name, Arrival::Picked, stamp);
}

void step_aside(Model& model) {
  const auto welcome = model.people.welcome_on(model.now.day());
  model.pin_given.reset();
  model.undo.reset();
  if (!model.people.nobody()) model.by = welcome.size() == 1 ? welcome.front()->name : "";
}

Effects on_came(Model& model, const PersonCame& came, const Stamp& stamp) {
  if (came.name != model.by) {
    model.pin_given.reset();
    model.by = came.name;
  }
  if (!asks_first(model.screen)) {
    tell(model, Tone::Done, fmt::format("{} is at the kiosk.", came.name));
    return {};
  }
  return go_on(model, stamp);
}

}  // namespace rackside::kiosk
