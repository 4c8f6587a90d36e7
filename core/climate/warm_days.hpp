#pragma once
// How warm each day was, rack by rack, over the years: what stands behind an animal's growth.

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "core/climate/room_climate.hpp"

namespace rackside {

/// The mean of what was read on one day.
struct WarmDay {
  Day day;
  Celsius mean;
  bool operator==(const WarmDay&) const = default;
};

struct WarmDays {
  // By event, so that one that is taken back can go.
  using Readings = std::map<EventId, Celsius>;
  std::map<std::string, std::map<Day, Readings>, std::less<>> racks;  // "" is the room as a whole

  /// From `since` on, in order; days without a reading are left out. Each day from the rack where
  /// it has one, else from the room.
  [[nodiscard]] std::vector<WarmDay> at(std::string_view rack, Day since) const;

  bool operator==(const WarmDays&) const = default;
};

/// Brings `days` up to date with one standing event; readings inside one animal's tub change
/// nothing.
void apply(WarmDays& days, const Event& event);

/// Drops a reading that was taken back.
void forget(WarmDays& days, const EventId& event);

}  // namespace rackside
