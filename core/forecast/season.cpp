#include "core/forecast/season.hpp"

#include <cmath>
#include <numbers>

namespace rackside {

std::size_t year_part(double day) {
  const double years = day / 365.25;
  const auto part = static_cast<std::size_t>((years - std::floor(years)) * year_parts);
  return part % year_parts;
}

LevelFilter in_season(LevelFilter filter, double loosened) {
  filter.keep_to_a_year(documented_priors().season.year_spread, loosened);
  return filter;
}

YearBell::YearBell(double sharpness) {
  for (std::size_t part = 0; part < year_parts; ++part)
    height_[part] = std::exp(
        sharpness * (std::cos(2 * std::numbers::pi * static_cast<double>(part) / year_parts) - 1));
}

}  // namespace rackside
