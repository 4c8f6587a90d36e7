#pragma once
// The readings of the last days, rack by rack, for a line that shows where the air is going.

#include <chrono>
#include <map>
#include <string>
#include <vector>

#include "core/climate/room_climate.hpp"

namespace rackside {

inline constexpr std::chrono::days air_days_shown{7};

struct AirPoint {
  EventId event;
  When when;
  double value = 0;  // C or %
  bool operator==(const AirPoint&) const = default;
};

/// In the order in which they were read.
struct AirSeries {
  std::vector<AirPoint> temperature;
  std::vector<AirPoint> humidity;
  bool operator==(const AirSeries&) const = default;
};

struct AirDays {
  std::map<std::string, AirSeries, std::less<>> racks;  // "" is the room as a whole
  bool operator==(const AirDays&) const = default;
};

/// Brings `air` up to date with one standing event that happened last; readings inside one
/// animal's tub change nothing.
void apply(AirDays& air, const Event& event);

/// Drops what was read before `since`, but never the last reading of a rack.
void keep_since(AirDays& air, Instant since);

/// Drops a reading that was taken back.
void forget(AirDays& air, const EventId& event);

/// The last readings.
[[nodiscard]] RoomClimate climate_of(const AirDays& air);

}  // namespace rackside
