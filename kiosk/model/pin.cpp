#include "core/people/pin.hpp"

#include <fmt/format.h>

#include <utility>

#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

std::string how_long(std::chrono::seconds wait) {
  const auto seconds = wait.count();
  if (seconds < 60) return fmt::format("{} second{}", seconds, seconds == 1 ? "" : "s");
  const auto minutes = (seconds + 59) / 60;
  return fmt::format("{} minute{}", minutes, minutes == 1 ? "" : "s");
}

std::string not_right(const PinAnswer& answer) {
  if (answer.verdict == PinVerdict::Wait)
    return fmt::format("Too many tries. In {} it can be tried again.", how_long(answer.wait));
  if (answer.wait.count() > 0)
    return fmt::format("That was not it. In {} it can be tried again.", how_long(answer.wait));
  return "That was not it. Try again.";
}

Effects give(PinPage& page) {
  page.waiting = true;
  return {CheckPin{std::exchange(page.digits, {})}};
}

Effects choose(Model& model, PinPage& page) {
  if (const auto fine = judge_new_pin(page.digits); !fine) {
    page.digits.clear();
    tell(model, Tone::Problem, fine.error().sentence);
    return {};
  }
  page.chosen = std::exchange(page.digits, {});
  page.step = PinStep::SayAgain;
  return {};
}

Effects say_again(Model& model, PinPage& page) {
  const std::string chosen = std::exchange(page.chosen, {});
  if (std::exchange(page.digits, {}) != chosen) {
    page.step = PinStep::ChooseNew;
    tell(model, Tone::Problem, "The two were not the same. Choose the PIN once more.");
    return {};
  }
  page.waiting = true;
  return {KeepPin{chosen}};
}

}  // namespace

Effects choose_pin(Model& model) {
  model.pin = PinPage{.step = PinStep::ChooseNew};
  go_to(model, ScreenName::Pin);
  return {};
}

void type_pin(Model& model, const std::string& character) {
  if (!model.pin || model.pin->waiting || character.size() != 1) return;
  const bool digit = character[0] >= '0' && character[0] <= '9';
  if (digit && model.pin->digits.size() < longest_pin) model.pin->digits += character;
}

Effects enter_pin(Model& model) {
  if (!model.pin || model.pin->waiting || model.pin->digits.empty()) return {};
  model.notice.reset();
  switch (model.pin->step) {
    case PinStep::Give: return give(*model.pin);
    case PinStep::ChooseNew: return choose(model, *model.pin);
    case PinStep::SayAgain: return say_again(model, *model.pin);
  }
  return {};
}

void on_pin_found(Model& model, const PinFound& found) {
  // What cannot be told stays closed.
  model.pin_set = found.set.value_or(true);
  if (!found.set) tell(model, Tone::Problem, found.set.error().sentence);
}

Effects on_pin_checked(Model& model, const PinChecked& checked, const Stamp& stamp) {
  if (!model.pin) return {};
  model.pin->waiting = false;
  if (!checked.answer) {
    tell(model, Tone::Problem, checked.answer.error().sentence);
  } else if (checked.answer->verdict != PinVerdict::Right) {
    tell(model, Tone::Problem, not_right(*checked.answer));
  } else {
    model.pin_given = stamp.now;
    return go_on(model, stamp);
  }
  return {};
}

Effects on_pin_kept(Model& model, const PinKept& kept, const Stamp& stamp) {
  if (!kept.problem) model.pin_set = true;
  if (!model.pin) return {};
  if (kept.problem) {
    model.pin = PinPage{.step = PinStep::ChooseNew};
    tell(model, Tone::Problem, kept.problem->sentence);
    return {};
  }
  model.pin_given = stamp.now;
  if (model.new_person) {
    model.pin.reset();
    go_back(model);
    return add_person(model, stamp);
  }
  Effects effects = go_on(model, stamp);
  if (!model.notice) tell(model, Tone::Done, "The PIN is set.");
  return effects;
}

}  // namespace rackside::kiosk
