#include <array>
#include <cassert>
#include <cmath>

#include <fmt/format.h>

#include "core/care/cautions.hpp"
#include "core/care/steps.hpp"

namespace rackside {
namespace {

// What cannot wait, then what a soft or moulting animal needs, then what speaks against a meal, and
// only then the meal. The last step always answers.
constexpr std::array<Step, 18> steps{
    prey_beside_a_moult, moult_takes_too_long, is_moulting,       is_shrivelled,
    prey_was_left,       has_just_moulted,     guards_a_sac,      shed_is_in_the_tub,
    is_hardening,        refuses_after_moult,  is_sluggish_alone, is_in_premoult,
    may_have_moulted,    fasts_without_a_sign, meal_is_due,       shed_is_to_be_measured,
    water_is_due,        waits_for_a_meal,
};

Handling handling_of(const Instruction& said) {
  switch (said.task) {
    case Task::GiveWater:
    case Task::TakePreyFromMoult:
    case Task::TakeOutPrey:
    case Task::TakeOutShed:
    case Task::Offer:
    case Task::OfferOneSmall:
    case Task::MistAndCheckWater: return Handling::LidOpen;
    case Task::MeasureFromShed:
    case Task::HelpWithMoult:
    case Task::RefusesAfterMoult:
    case Task::LookForShed:
    case Task::LookCloser:
    case Task::Reoffer:
    case Task::NotDue:
    case Task::Withhold:
    case Task::LeaveAlone: return Handling::LidClosed;
  }
  return Handling::LidClosed;
}

std::optional<std::string> caution_for(const AnimalState& animal, const Instruction& said) {
  if (said.health_flag) return std::string(health_caution());
  const Cautions& cautions = cautions_for(animal.species);
  const bool shed = said.task == Task::MeasureFromShed || said.task == Task::TakeOutShed;
  if (shed && cautions.urticating_hairs)
    return "Urticating hairs stick to the shed: gloves, and wash your hands.";
  std::string line = caution_line(cautions, handling_of(said));
  if (line.empty()) return std::nullopt;
  return line;
}

// A male's clock belongs to whatever is said about him, where there is room.
void add_age_of_male(Instruction& said, const Findings& f) {
  if (f.animal.stage != Stage::MatureMale || said.why.size() >= 3) return;
  const auto line = male_clock(f.animal, f.rules, f.today);
  if (line) said.why.push_back(line->sentence);
}

}  // namespace

Instruction instruct(const AnimalState& animal, const Forecast* forecast, const CareRules& rules,
                     const RackClimate* air, Moment now) {
  assert(animal.life == Life::Living);
  const Findings found = find_out(animal, forecast, rules, air, now);
  Instruction said;
  for (const Step step : steps)
    if (auto answer = step(found)) {
      said = *std::move(answer);
      break;
    }
  add_age_of_male(said, found);
  said.caution = caution_for(animal, said);
  return said;
}

}  // namespace rackside
