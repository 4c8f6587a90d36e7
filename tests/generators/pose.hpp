#pragma once
// Where a label is in front of a pinhole camera: from pixels to places on the label and back.

#include <array>
#include <optional>

#include "labels/reader/geometry.hpp"

namespace rackside::tests {

struct Scene;

/// How the hand holds the label in one frame: angles in radians, offset of its middle in pixels.
struct Hand {
  double turn;       // of the picture
  double tilt_axis;  // in the label's plane
  double roll;       // of the symbol on its surface: matters on a cylinder
  double x, y;
};

class Pose {
 public:
  /// `side`: modules of the symbol.
  Pose(const Scene& scene, double side, const Hand& hand);

  /// Modules from the symbol's top left; none where the ray misses a cylinder.
  [[nodiscard]] std::optional<Point> label_point(Point pixel) const;
  [[nodiscard]] Point picture_point(Point modules) const;
  /// Cheap: whether the label with its surroundings can be near that pixel.
  [[nodiscard]] bool near_label(int x, int y) const;

 private:
  using Vector = std::array<double, 3>;
  [[nodiscard]] std::optional<Point> on_surface(const Vector& from, const Vector& along) const;

  std::array<Vector, 3> axes_;  // of the label, as the camera sees them
  Vector eye_;                  // the camera, as the label sees it
  Point middle_;                // of the label in the picture
  double roll_cos_, roll_sin_, focal_, distance_, module_mm_, radius_, half_side_, reach_;
};

}  // namespace rackside::tests
