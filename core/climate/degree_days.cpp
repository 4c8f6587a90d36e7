#include "core/climate/degree_days.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace rackside {
namespace {

// Mean over a day of what lies above `threshold`. The part above `upper` is then taken off again,
// which gives the horizontal cut-off.
double sine_above(double minimum, double maximum, double threshold) {
  const double middle = (minimum + maximum) / 2;
  if (minimum >= threshold) return middle - threshold;
  if (maximum <= threshold) return 0;
  const double swing = (maximum - minimum) / 2;
  const double crossing = std::asin((threshold - middle) / swing);
  return ((middle - threshold) * (std::numbers::pi / 2 - crossing) + swing * std::cos(crossing)) /
         std::numbers::pi;
}

double triangle_above(double minimum, double maximum, double threshold) {
  if (minimum >= threshold) return (minimum + maximum) / 2 - threshold;
  if (maximum <= threshold) return 0;
  const double top = maximum - threshold;
  return top * top / (2 * (maximum - minimum));
}

}  // namespace

double degree_days_by_sine(const DayOfWarmth& day) {
  return sine_above(day.minimum, day.maximum, day.lower) -
         sine_above(day.minimum, day.maximum, day.upper);
}

double degree_days_by_triangle(const DayOfWarmth& day) {
  return triangle_above(day.minimum, day.maximum, day.lower) -
         triangle_above(day.minimum, day.maximum, day.upper);
}

}  // namespace rackside
