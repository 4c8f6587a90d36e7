#include "core/forecast/season.hpp"

#include <cmath>
#include <numbers>

namespace rackside {

YearWaves year_waves(double day) {
  const double angle = 2 * std::numbers::pi * day / 365.25;
  return {std::cos(angle), std::sin(angle), std::cos(2 * angle), std::sin(2 * angle)};
}

double season_tilt(const Season& season, const YearWaves& waves) {
  return std::exp(season[0] * waves[0] + season[1] * waves[1] + season[2] * waves[2] +
                  season[3] * waves[3]);
}

double season_tilt(const Season& season, double day) {
  return season == Season{} ? 1 : season_tilt(season, year_waves(day));
}

}  // namespace rackside
