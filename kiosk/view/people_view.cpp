#include "kiosk/view/people_view.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "core/event/words.hpp"
#include "core/words/dates.hpp"
#include "kiosk/model/permission.hpp"
#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

PersonLine line_of(const Model& model, const Person& person) {
  const Day today = model.now.day();
  PersonLine line{person.name, std::string(word_of(person.role)), true};
  const auto day = [&](Day named) { return day_words(named, today, model.settings.wording.dates); };
  switch (badge_state(person, today)) {
    case BadgeState::Open:
      if (person.until) line.detail += fmt::format(", until {}", day(*person.until));
      return line;
    case BadgeState::PastLastDay:
      line.detail += fmt::format(", until {}", day(*person.until));
      break;
    case BadgeState::Ended:
      line.detail += fmt::format(", ended {}", day(person.ended->moment.day()));
      break;
  }
  line.welcome = false;
  return line;
}

std::string pin_detail(const Model& model) {
  const std::string length = fmt::format("{} to {} digits.", shortest_pin, longest_pin);
  switch (model.pin->step) {
    case PinStep::Give:
      return model.wanted ? "For " + purpose(model, *model.wanted) + "." : std::string{};
    case PinStep::ChooseNew:
      return length +
             " It guards setup, people, deaths, other people's entries and the way out of the "
             "program.";
    case PinStep::SayAgain:
      return "The same once more. If it is forgotten, whoever has the machine's account deletes "
             "the .pin file beside the log.";
  }
  return {};
}

}  // namespace

std::vector<PersonLine> view_people(const Model& model) {
  std::vector<PersonLine> lines = view_welcome(model);
  for (const auto& [name, person] : model.people.by_name)
    if (badge_state(person, model.now.day()) != BadgeState::Open)
      lines.push_back(line_of(model, person));
  return lines;
}

std::vector<PersonLine> view_welcome(const Model& model) {
  std::vector<PersonLine> lines;
  for (const Person* person : model.people.welcome_on(model.now.day()))
    lines.push_back(line_of(model, *person));
  return lines;
}

PersonLine view_person(const Model& model) {
  const Person* person = model.people.named(model.person);
  return person == nullptr ? PersonLine{model.person, {}, false} : line_of(model, *person);
}

PinView view_pin(const Model& model) {
  if (!model.pin) return {};
  const bool give = model.pin->step == PinStep::Give;
  return {give ? "The keeper's PIN" : "A PIN for the keeper", pin_detail(model),
          model.pin->digits.size(), model.pin->waiting};
}

}  // namespace rackside::kiosk
