#pragma once
// A clock that runs as fast as growth does: with the warmth where it was read, else with the season
// where the log shows one. Otherwise it is the clock on the wall.

#include <optional>
#include <span>
#include <vector>

#include "core/forecast/priors.hpp"
#include "core/forecast/surroundings.hpp"

namespace rackside {

/// A yearly wave of growth: its rate is 1 + cosine * cos(year) + sine * sin(year).
struct YearlyWave {
  double cosine = 0, sine = 0;

  bool operator==(const YearlyWave&) const = default;
};

class GrowthClock {
 public:
  /// The wall clock.
  GrowthClock() = default;
  /// `wave` is held to less than 0.9 of the mean rate, so that time never stands still.
  explicit GrowthClock(const YearlyWave& wave);
  /// Growth stops below `threshold` degrees C. Weeks without a reading run as the mean of those
  /// with one; the future as the same weeks of the last year, or as that mean.
  GrowthClock(std::span<const WeekOfWarmth> weeks, double threshold, const WarmthPriors& priors);

  /// Days of this clock between two wall days.
  [[nodiscard]] double between(double from, double to) const { return at(to) - at(from); }
  /// The wall day on which `elapsed` days of this clock have gone since wall day `from`.
  [[nodiscard]] double after(double from, double elapsed) const;

 private:
  [[nodiscard]] double at(double day) const;
  [[nodiscard]] double rate_of_wave(double day) const;

  YearlyWave wave_;
  double first_ = 0;           // wall day of the first knot; knots are a week apart
  std::vector<double> total_;  // clock days at each knot
  double rate_ = 1;            // before the first and after the last knot
};

}  // namespace rackside
