#pragma once
// What lens, hand and sensor do to a picture of light.

#include <vector>

#include "labels/reader/grey_image.hpp"
#include "tests/generators/symbols.hpp"

namespace rackside::tests {

/// Light before the sensor, in grey levels.
struct Light {
  int width = 0;
  int height = 0;
  std::vector<float> value;

  Light(int columns, int rows, float level)
      : width(columns), height(rows), value(static_cast<std::size_t>(columns * rows), level) {}
  [[nodiscard]] float& at(int x, int y) { return value[static_cast<std::size_t>(y * width + x)]; }
  [[nodiscard]] float at(int x, int y) const {
    return value[static_cast<std::size_t>(y * width + x)];
  }
  /// Between pixels, the border repeated outwards.
  [[nodiscard]] float between(double x, double y) const;
};

void blur(Light& light, double sigma);
/// The mean along a line of `length` pixels at `angle` (radians) through each pixel.
void smear(Light& light, double length, double angle);
/// Adds Gaussian noise and rounds.
[[nodiscard]] GreyImage expose(const Light& light, double noise, Random& random);

}  // namespace rackside::tests
