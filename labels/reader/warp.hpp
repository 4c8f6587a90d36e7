#pragma once
// From a symbol's modules to pixels: a plane or a cylinder, tilted, before a pinhole camera.

#include <array>

#include "labels/reader/bending.hpp"

namespace rackside {

/// Module coordinates have their origin in the symbol's middle. A label on a cylinder is bent
/// about an axis at a right angle to `bend`, whose length is the curvature in 1 / modules; `lift`
/// is what one module of depth moves a point by in the picture. Flat when `bend` is 0.
struct Warp {
  std::array<double, 9> plane{};  // a homography, row by row
  Point bend;
  Point lift;

  [[nodiscard]] Point operator()(double x, double y) const;
};

/// Its shape as a few numbers of like size that can be varied one by one: where the corners of
/// the flat symbol would be in the picture, and the bend.
struct WarpShape {
  Quadrilateral corners;
  Point bend;
  Point lift;
};

[[nodiscard]] Warp make_warp(const WarpShape& shape, double side);

/// What three points of a symbol leave open: which of two tilts it has, and how it is bent. Of a
/// symbol seen straight on they tell no tilt: a hundredth of a pixel in one of them is some
/// degrees.
struct WarpGuess {
  double tilt_sign = 1;  // or 0: straight on
  Point bend;
};

/// The shape that brings three module places to three pixels, for a camera whose focal length is
/// `focal` pixels.
[[nodiscard]] WarpShape shape_through(const std::array<Point, 3>& modules,
                                      const std::array<Point, 3>& pixels, double side, double focal,
                                      const WarpGuess& guess);

}  // namespace rackside
