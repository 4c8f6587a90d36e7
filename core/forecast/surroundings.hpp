#pragma once
// How warm it was around each animal, from readings of its own and of its rack.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/event/event.hpp"

namespace rackside {

/// The mean of a week's readings. `day` is the week's first day, counted from 1970-01-01.
struct WeekOfWarmth {
  float day = 0;
  float celsius = 0;

  bool operator==(const WeekOfWarmth&) const = default;
};

/// Sums of readings by week; readings in any order.
class WeeklyMeans {
 public:
  void add(double day, double celsius);
  [[nodiscard]] std::vector<WeekOfWarmth> weeks() const;

 private:
  struct Sum {
    double total = 0;
    int readings = 0;
  };
  std::map<long, Sum> sums_;
};

/// Rack temperatures, and where each tub stands.
struct Surroundings {
  std::map<std::string, std::vector<WeekOfWarmth>> racks;
  std::map<Code, std::string> rack_of;

  /// The rack's weeks, or the whole room's (read without naming a rack) where the rack has none.
  [[nodiscard]] const std::vector<WeekOfWarmth>* around(const std::optional<Code>& enclosure) const;
};

/// Whether a reading can be one of a room in which animals live; others are slips of the pen.
[[nodiscard]] bool is_room_temperature(Celsius temperature);

/// From events that name no animal (others are passed over), up to and including `as_of`.
[[nodiscard]] Surroundings gather_surroundings(std::vector<Event> events, Instant as_of);

}  // namespace rackside
