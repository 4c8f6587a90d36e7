#include "core/people/people.hpp"

#include <fmt/format.h>

#include <utility>

#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

Effects save(std::string by, Details details, const Stamp& stamp) {
  return {SaveDrafts{{draft_now(std::move(by), stamp, std::move(details))}}};
}

bool last_keeper(const Model& model, const Person& person) {
  People others = model.people;
  others.by_name.erase(person.name);
  return person.role == Role::Keeper && !others.has_keeper(model.now.day());
}

void added(Model& model, const PersonAdded& person) {
  // The first keeper is the one who has just said so.
  if (model.people.by_name.size() == 1) model.by = person.name;
  model.person = person.name;
  go_to(model, ScreenName::People);
  go_to(model, ScreenName::Person);
  tell(model, Tone::Done,
       fmt::format("{} can work here now. This is the code of their badge.", person.name));
}

}  // namespace

std::optional<std::string> name_person(Model& model, Role role, const std::string& typed) {
  auto name = new_name(model.people, typed);
  if (!name) return name.error().sentence;
  model.new_person = PersonAdded{*std::move(name), role, {}};
  return std::nullopt;
}

Effects add_person(Model& model, const Stamp& stamp) {
  if (!model.new_person) return {};
  // What is guarded stays closed until there is something to open it with.
  if (model.pin_set == false) return choose_pin(model);
  const PersonAdded person = *std::exchange(model.new_person, std::nullopt);
  return save(model.people.nobody() ? person.name : model.by, person, stamp);
}

void open_person(Model& model, const std::string& name) {
  if (model.people.named(name) == nullptr) return;
  model.person = name;
  go_to(model, ScreenName::Person);
}

Effects give_access(Model& model, const Stamp& stamp) {
  const Person* person = model.people.named(model.person);
  if (person == nullptr) return {};
  return save(model.by, PersonAdded{person->name, person->role, {}}, stamp);
}

Effects end_access(Model& model, const Stamp& stamp) {
  const Person* person = model.people.named(model.person);
  if (person == nullptr) return {};
  if (last_keeper(model, *person)) {
    tell(model, Tone::Problem,
         "This is the only keeper. Add another first, or nobody could add anybody any more.");
    return {};
  }
  return save(model.by, PersonEnded{person->name}, stamp);
}

Effects print_badge(const Model& model) {
  if (model.people.named(model.person) == nullptr) return {};
  return {PrintBadgeOf{model.person, model.settings}};
}

Effects on_people_event(Model& model, const Event& event, const Stamp& stamp) {
  apply(model.people, event);
  if (const auto* came = std::get_if<PersonCame>(&event.details))
    return on_came(model, *came, stamp);
  if (const auto* person = std::get_if<PersonAdded>(&event.details)) added(model, *person);
  if (const auto* ended = std::get_if<PersonEnded>(&event.details)) {
    if (ended->name == model.by) step_aside(model);
    tell(model, Tone::Done,
         fmt::format("{}'s badge opens nothing any more. Their entries stay.", ended->name));
  }
  return {};
}

}  // namespace rackside::kiosk
