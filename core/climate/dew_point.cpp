#include "core/climate/dew_point.hpp"

#include <cmath>

namespace rackside {
namespace {

constexpr double slope = 17.625;
constexpr double offset = 243.04;  // C

}  // namespace

std::optional<Celsius> dew_point(Celsius temperature, Percent humidity) {
  const double t = temperature.value;
  const double h = humidity.value;
  // Written so that a value that is no number at all is refused too.
  if (!(t >= -40 && t <= 60 && h > 0 && h <= 100)) return std::nullopt;
  const double wetness = std::log(h / 100.0) + slope * t / (offset + t);
  return Celsius{offset * wetness / (slope - wetness)};
}

}  // namespace rackside
