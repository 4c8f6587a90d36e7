#pragma once
// What is known of the air in the rack room: the last readings, by rack.

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/event/event.hpp"
#include "core/values/units.hpp"

namespace rackside {

struct TemperatureReading {
  Celsius value;
  When when;
  bool operator==(const TemperatureReading&) const = default;
};
struct HumidityReading {
  Percent value;
  When when;
  bool operator==(const HumidityReading&) const = default;
};

/// The last readings of one rack, or of the room.
struct RackClimate {
  std::optional<TemperatureReading> temperature;
  std::optional<HumidityReading> humidity;
  bool operator==(const RackClimate&) const = default;
};

struct RoomClimate {
  std::map<std::string, RackClimate, std::less<>> racks;  // "" is the room as a whole

  /// Each value from the rack where it has one, else from the room.
  [[nodiscard]] RackClimate at(std::string_view rack) const;

  bool operator==(const RoomClimate&) const = default;
};

/// Brings `climate` up to date with one standing event. Readings inside one animal's tub say
/// nothing about the room and change nothing.
void apply(RoomClimate& climate, const Event& event);

/// Events in any order, retractions among them.
[[nodiscard]] RoomClimate fold_climate(std::vector<Event> events);

}  // namespace rackside
