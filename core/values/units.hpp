#pragma once
// Measures as strong types. Everything inside the program is metric; inches and Fahrenheit are
// turned at the edge.

#include <compare>

namespace rackside {

struct Millimetres {
  double value = 0;
  auto operator<=>(const Millimetres&) const = default;
};

struct Celsius {
  double value = 0;
  auto operator<=>(const Celsius&) const = default;
};

/// Relative humidity in percent, 0 to 100.
struct Percent {
  double value = 0;
  auto operator<=>(const Percent&) const = default;
};

[[nodiscard]] constexpr Millimetres from_inches(double inches) { return {inches * 25.4}; }
[[nodiscard]] constexpr double to_inches(Millimetres length) { return length.value / 25.4; }
[[nodiscard]] constexpr Celsius from_fahrenheit(double degrees) { return {(degrees - 32.0) / 1.8}; }
[[nodiscard]] constexpr double to_fahrenheit(Celsius temperature) {
  return temperature.value * 1.8 + 32.0;
}

}  // namespace rackside
