#pragma once
// A picture in floating point, and the few filters that readings are varied with.

#include <algorithm>
#include <vector>

#include "labels/reader/geometry.hpp"
#include "labels/reader/grey_image.hpp"

namespace rackside {

struct Plane {
  int width = 0;
  int height = 0;
  std::vector<float> value;

  Plane() = default;
  Plane(int columns, int rows)
      : width(columns),
        height(rows),
        value(static_cast<std::size_t>(columns) * static_cast<std::size_t>(rows)) {}
  [[nodiscard]] const float* row(int y) const { return value.data() + offset(y); }
  [[nodiscard]] float* row(int y) { return value.data() + offset(y); }
  [[nodiscard]] float at(int x, int y) const { return row(y)[x]; }
  [[nodiscard]] std::ptrdiff_t offset(int y) const {
    return static_cast<std::ptrdiff_t>(y) * width;
  }

  /// Between pixels (their middles are at .5), the border repeated outwards.
  [[nodiscard]] float at(const Point& point) const {
    return between(static_cast<float>(std::clamp(point.x - 0.5, 0.0, width - 1.001)),
                   static_cast<float>(std::clamp(point.y - 0.5, 0.0, height - 1.001)));
  }
  /// The same, counted from the middle of the first pixel and known to be inside.
  [[nodiscard]] float between(float x, float y) const {
    const int column = static_cast<int>(x), line = static_cast<int>(y);
    const float right = x - static_cast<float>(column), below = y - static_cast<float>(line);
    const float* upper = row(line) + column;
    const float* lower = upper + width;
    const float top = upper[0] + right * (upper[1] - upper[0]);
    return top + below * (lower[0] + right * (lower[1] - lower[0]) - top);
  }
};

[[nodiscard]] Plane as_plane(const GreyImage& image);
/// Rounded and cut off at 0 and 255.
[[nodiscard]] GreyImage as_grey(const Plane& plane);
[[nodiscard]] GreyImage cut_out(const GreyImage& image, int left, int top, int width, int height);

/// Gaussian; sigma in px.
[[nodiscard]] Plane smoothed(const Plane& plane, double sigma);
/// plane + amount * (plane - smoothed(sigma)).
[[nodiscard]] Plane sharpened(const Plane& plane, double amount, double sigma);
/// The mean over (2 * reach + 1) x (2 * reach + 1) pixels.
[[nodiscard]] Plane box_mean(const Plane& plane, int reach);
/// Half as wide and high: the mean of every four pixels.
[[nodiscard]] Plane halved(const Plane& plane);
/// `image` with `factor` by `factor` pixels averaged into one, beginning at `left`, `top`.
[[nodiscard]] GreyImage shrunk(const GreyImage& image, int factor, int left = 0, int top = 0);
/// Twice as wide and high, bilinear.
[[nodiscard]] GreyImage doubled(const GreyImage& image);

}  // namespace rackside
