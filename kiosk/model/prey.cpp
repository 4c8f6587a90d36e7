// What an offer is recorded with.

#include "core/care/meals.hpp"
#include "kiosk/model/model.hpp"

namespace rackside::kiosk {

std::optional<PreyPlan> prey_offered(const Model& model) {
  const auto animal = shown_animal(model);
  if (!animal || animal->life != Life::Living || !model.overview_known) return std::nullopt;
  const auto found = model.forecasts.find(animal->id);
  const Forecast* forecast = found == model.forecasts.end() ? nullptr : &found->second;
  const CareRules rules = model.rules.rules_for(*animal);
  const Instruction said = *instruction_here(model);
  if (said.prey) return said.prey;
  if (said.task != Task::NotDue && said.task != Task::Reoffer) return std::nullopt;
  return prey_for(*animal, rules, Portion::Usual, forecast == nullptr ? 0 : forecast->p_premoult);
}

}  // namespace rackside::kiosk
