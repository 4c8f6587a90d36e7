#include "core/climate/air_days.hpp"

#include <algorithm>

namespace rackside {

void apply(AirDays& air, const Event& event) {
  if (event.animal) return;
  if (const auto* read = std::get_if<TemperatureRead>(&event.details))
    air.racks[read->rack].temperature.push_back({event.id, event.when, read->temperature.value});
  if (const auto* read = std::get_if<HumidityRead>(&event.details))
    air.racks[read->rack].humidity.push_back({event.id, event.when, read->humidity.value});
}

void keep_since(AirDays& air, Instant since) {
  for (auto& [rack, series] : air.racks)
    for (auto* points : {&series.temperature, &series.humidity}) {
      if (points->empty()) continue;
      const auto last = points->end() - 1;
      const auto kept = std::find_if(points->begin(), last, [&](const AirPoint& point) {
        return point.when.moment.utc >= since;
      });
      points->erase(points->begin(), kept);
    }
}

void forget(AirDays& air, const EventId& event) {
  for (auto& [rack, series] : air.racks)
    for (auto* points : {&series.temperature, &series.humidity})
      std::erase_if(*points, [&](const AirPoint& point) { return point.event == event; });
}

RoomClimate climate_of(const AirDays& air) {
  RoomClimate climate;
  for (const auto& [rack, series] : air.racks) {
    RackClimate& last = climate.racks[rack];
    if (!series.temperature.empty())
      last.temperature = TemperatureReading{Celsius{series.temperature.back().value},
                                            series.temperature.back().when};
    if (!series.humidity.empty())
      last.humidity =
          HumidityReading{Percent{series.humidity.back().value}, series.humidity.back().when};
  }
  return climate;
}

}  // namespace rackside
