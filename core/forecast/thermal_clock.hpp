#pragma once
// A clock that runs with the warmth: one of its days is a day at the reference temperature. Where
// nobody read a thermometer it is the clock on the wall.

#include <optional>
#include <span>
#include <vector>

#include "core/forecast/priors.hpp"
#include "core/forecast/surroundings.hpp"

namespace rackside {

class ThermalClock {
 public:
  /// The wall clock.
  ThermalClock() = default;
  /// Growth stops below `threshold` degrees C. Weeks without a reading run as the mean of those
  /// with one; the future as the same weeks of the last year, or as that mean.
  ThermalClock(std::span<const WeekOfWarmth> weeks, double threshold, const WarmthPriors& priors);

  /// Days of this clock between two wall days.
  [[nodiscard]] double between(double from, double to) const { return at(to) - at(from); }
  /// The wall day on which `elapsed` days of this clock have gone since wall day `from`.
  [[nodiscard]] double after(double from, double elapsed) const;
  [[nodiscard]] bool is_wall_clock() const { return total_.empty(); }

 private:
  [[nodiscard]] double at(double day) const;

  double first_ = 0;           // wall day of the first knot; knots are a week apart
  std::vector<double> total_;  // clock days at each knot
  double rate_ = 1;            // before the first and after the last knot
};

}  // namespace rackside
