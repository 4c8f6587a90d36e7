#include "core/climate/room_climate.hpp"

namespace rackside {

RackClimate RoomClimate::at(std::string_view rack) const {
  RackClimate found;
  for (const std::string_view name : {std::string_view{}, rack}) {
    const auto entry = racks.find(name);
    if (entry == racks.end()) continue;
    if (entry->second.temperature) found.temperature = entry->second.temperature;
    if (entry->second.humidity) found.humidity = entry->second.humidity;
  }
  return found;
}

void apply(RoomClimate& climate, const Event& event) {
  if (event.animal) return;
  if (const auto* read = std::get_if<TemperatureRead>(&event.details))
    climate.racks[read->rack].temperature = TemperatureReading{read->temperature, event.when};
  if (const auto* read = std::get_if<HumidityRead>(&event.details))
    climate.racks[read->rack].humidity = HumidityReading{read->humidity, event.when};
}

RoomClimate fold_climate(std::vector<Event> events) {
  RoomClimate climate;
  for (const Event& event : standing(std::move(events))) apply(climate, event);
  return climate;
}

}  // namespace rackside
