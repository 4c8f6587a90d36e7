#include "core/forecast/normal.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace rackside {

double normal_density(double z) {
  constexpr double inv_sqrt_2pi = std::numbers::inv_sqrtpi / std::numbers::sqrt2;
  return inv_sqrt_2pi * std::exp(-0.5 * z * z);
}

double normal_cdf(double z) { return 0.5 * std::erfc(-z / std::numbers::sqrt2); }

double normal_mass(double low, double high) {
  if (low > 0) return normal_cdf(-low) - normal_cdf(-high);
  return normal_cdf(high) - normal_cdf(low);
}

namespace {

constexpr double least_mass = 1e-280;  // what is told of bounds that hold next to nothing

// Gauss-Legendre with three points: bounds so near that the density is almost a parabola.
Truncated by_quadrature(double mean, double deviation, double a, double b) {
  const double half = (b - a) / 2;
  const double reach = half * std::sqrt(0.6);
  const double middle = (a + b) / 2;
  const double low = 5 * normal_density(middle - reach);
  const double centre = 8 * normal_density(middle);
  const double high = 5 * normal_density(middle + reach);
  const double sum = low + centre + high;
  if (!(sum > least_mass))
    return {least_mass, mean + deviation * (std::abs(a) < std::abs(b) ? a : b), 0};
  const double shift = reach * (high - low) / sum;
  const double square = reach * reach * (high + low) / sum;
  return {half * sum / 9, mean + deviation * (middle + shift),
          deviation * deviation * (square - shift * shift)};
}

}  // namespace

Truncated truncate_normal(double mean, double deviation, double low, double high) {
  const double a = (low - mean) / deviation;
  const double b = (high - mean) / deviation;
  if (b - a < 0.03) {
    const double middle = (a + b) / 2;
    return {std::max(least_mass, normal_density(middle) * (b - a)), mean + middle * deviation,
            (high - low) * (high - low) / 12};
  }
  if (b - a < 0.7) return by_quadrature(mean, deviation, a, b);
  const double mass = normal_mass(a, b);
  if (!(mass > least_mass)) return {least_mass, std::abs(a) < std::abs(b) ? low : high, 0};
  const double at_a = std::isinf(a) ? 0 : normal_density(a);
  const double at_b = std::isinf(b) ? 0 : normal_density(b);
  const double shift = (at_a - at_b) / mass;
  const double edges = (std::isinf(a) ? 0 : a * at_a) - (std::isinf(b) ? 0 : b * at_b);
  const double variance = std::max(0.0, 1 + edges / mass - shift * shift);
  return {mass, mean + deviation * std::clamp(shift, a, b), deviation * deviation * variance};
}

}  // namespace rackside
