#include "core/forecast/season.hpp"

#include <cmath>
#include <numbers>

namespace rackside {

double season_tilt(const Season& season, double day) {
  if (season == Season{}) return 1;
  const double angle = 2 * std::numbers::pi * day / 365.25;
  return std::exp(season[0] * std::cos(angle) + season[1] * std::sin(angle) +
                  season[2] * std::cos(2 * angle) + season[3] * std::sin(2 * angle));
}

}  // namespace rackside
