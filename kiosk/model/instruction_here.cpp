#include "kiosk/model/model.hpp"

namespace rackside::kiosk {

std::optional<Instruction> instruction_here(const Model& model) {
  const auto animal = shown_animal(model);
  if (!animal || animal->life != Life::Living) return std::nullopt;
  const EnclosureState* tub = model.collection.enclosure(model.tub->code);
  const auto found = model.forecasts.find(animal->id);
  const Forecast* forecast = found == model.forecasts.end() ? nullptr : &found->second;
  const RackClimate air = model.climate.at(tub == nullptr ? "" : tub->place.rack);
  return instruct(*animal, forecast, model.rules.rules_for(*animal), &air, model.now);
}

}  // namespace rackside::kiosk
