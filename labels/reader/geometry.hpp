#pragma once
// Places in a picture.

#include <array>

namespace rackside {

struct Point {
  double x = 0;  // pixels from the left
  double y = 0;  // pixels from the top
  bool operator==(const Point&) const = default;
};

/// Clockwise from the symbol's own top left.
using Quadrilateral = std::array<Point, 4>;

[[nodiscard]] inline double distance_squared(const Point& a, const Point& b) {
  return (a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y);
}

[[nodiscard]] inline Point middle_of(const Quadrilateral& corners) {
  Point sum;
  for (const Point& corner : corners) {
    sum.x += corner.x / 4;
    sum.y += corner.y / 4;
  }
  return sum;
}

}  // namespace rackside
