#include <algorithm>

#include "core/code/code_of_name.hpp"
#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

// Shelf codes hold no name: the code of every shelf that is known is compared.
const Place* shelf_of(const Collection& collection, const Code& code) {
  for (const auto& [tub, enclosure] : collection.enclosures)
    if (code_of_shelf(enclosure.place.rack, enclosure.place.shelf) == code) return &enclosure.place;
  return nullptr;
}

}  // namespace

void show_map(Model& model) {
  const auto racks = racks_in(model.collection);
  model.map = {};
  const EnclosureState* last =
      model.last_tub ? model.collection.enclosure(*model.last_tub) : nullptr;
  if (last != nullptr)
    model.map.rack = last->place.rack;
  else if (racks.size() == 1)
    model.map.rack = racks.front();
  go_to(model, ScreenName::Map);
}

void open_rack(Model& model, const OpenRack& at) {
  go_to(model, ScreenName::Map);
  model.map.rack = at.rack;
  model.map.shelf = at.shelf;
}

Effects open_shelf(Model& model, const Code& code) {
  const Place* place = shelf_of(model.collection, code);
  if (place == nullptr)
    tell(model, Tone::Problem, "No tub of this collection stands on this shelf.");
  else
    open_rack(model, {place->rack, place->shelf});
  return {};
}

}  // namespace rackside::kiosk
