#include "kiosk/view/list_view.hpp"

#include "core/care/instruction.hpp"
#include "core/collection/place.hpp"

namespace rackside::kiosk {

TubLine tub_line(const Model& model, const EnclosureState& enclosure) {
  Place shelf = enclosure.place;
  shelf.position.clear();
  TubLine line{
      .code = enclosure.code, .position = enclosure.place.position, .shelf = format_place(shelf)};
  if (enclosure.residents.empty()) {
    line.species = "empty";
    return line;
  }
  const AnimalState& animal = *model.collection.animal(enclosure.residents.front());
  line.species = display_name(animal);
  // Without the whole history nothing can be said about when it last ate.
  if (!model.overview_known) return line;
  const auto found = model.forecasts.find(animal.id);
  const Forecast* forecast = found == model.forecasts.end() ? nullptr : &found->second;
  const CareRules rules = model.rules.rules_for(animal);
  const RackClimate air = model.climate.at(enclosure.place.rack);
  const Instruction instruction = instruct(animal, forecast, rules, &air, model.now);
  line.state = state_sentence(animal, forecast, rules, model.now);
  line.task = instruction.sentence;
  line.leave_alone = instruction.urgency == Urgency::LeaveAlone;
  line.urgent = instruction.urgent;
  return line;
}

}  // namespace rackside::kiosk
