// The form for a cover.

#include <fmt/format.h>

#include <algorithm>

#include "core/cover/cover_access.hpp"
#include "core/cover/cover_rules.hpp"
#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

CoverPlanned planned_by(const CoverForm& form) {
  return {form.who, *form.from, *form.to, form.racks};
}

// Said as soon as both days are there, not only at the end.
void judge_days(Model& model) {
  const CoverForm& form = model.new_cover;
  if (!form.from || !form.to) return;
  CoverPlanned planned = planned_by(form);
  if (planned.who.empty()) planned.who = "somebody";
  const auto can = check_cover(model.cover, planned, model.now.day(), model.settings.wording.dates);
  if (!can) tell(model, Tone::Problem, can.error().sentence);
}

std::optional<std::string> what_is_missing(const Model& model) {
  const CoverForm& form = model.new_cover;
  if (!model.roster_known) return "Still reading who works here. Touch it again in a moment.";
  if (form.who.empty()) return "Say first who stands in. Nothing was planned.";
  if (!form.from || !form.to) return "Choose the first and the last day. Nothing was planned.";
  return std::nullopt;
}

}  // namespace

std::set<std::string> stand_ins_known(const Model& model) {
  std::set<std::string> names;
  for (const auto& [name, person] : model.people.by_name)
    if (person.role == Role::Assistant) names.insert(name);
  for (const Cover& cover : model.cover.covers) names.insert(cover.who);
  return names;
}

std::optional<std::string> name_stand_in(Model& model, const std::string& typed) {
  if (model.people.named(typed) == nullptr) {
    auto name = new_name(model.people, typed);
    if (!name) return name.error().sentence;
    model.new_cover.who = *std::move(name);
  } else {
    model.new_cover.who = typed;
  }
  return std::nullopt;
}

void ask_day(Model& model, WhichDay which) {
  model.new_cover.asked = which;
  go_to(model, ScreenName::Days);
}

void pick_day(Model& model, Day day) {
  CoverForm& form = model.new_cover;
  (form.asked == WhichDay::First ? form.from : form.to) = day;
  go_back(model);
  judge_days(model);
}

void toggle_rack(Model& model, const std::string& rack) {
  auto& racks = model.new_cover.racks;
  if (std::erase(racks, rack) == 0) racks.push_back(rack);
  std::ranges::sort(racks);
  model.notice.reset();
  judge_days(model);
}

Effects plan_cover(Model& model, const Stamp& stamp) {
  if (!model.saving.empty()) return {};
  if (const auto missing = what_is_missing(model)) {
    tell(model, Tone::Problem, *missing);
    return {};
  }
  const CoverPlanned planned = planned_by(model.new_cover);
  const Day today = stamp.now.day();
  if (const auto can = check_cover(model.cover, planned, today, model.settings.wording.dates);
      !can) {
    tell(model, Tone::Problem, can.error().sentence);
    return {};
  }
  const auto access = access_for(model.people, planned, today);
  if (!access) {
    tell(model, Tone::Problem, access.error().sentence);
    return {};
  }
  std::vector<Draft> drafts{draft_now(model.by, stamp, planned)};
  if (*access) {
    drafts.push_back(draft_now(model.by, stamp, **access));
    drafts.back().id = stamp.next_fresh;
  }
  return {SaveDrafts{std::move(drafts)}};
}

}  // namespace rackside::kiosk
