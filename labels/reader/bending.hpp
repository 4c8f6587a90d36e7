#pragma once
// A flat label bent onto a cylinder.

#include <cmath>

#include "labels/reader/geometry.hpp"

namespace rackside {

/// Bends about an axis at a right angle to `bend`, whose length is the curvature in 1 / modules.
/// Sine and cosine by their series: a label never goes further around a tub than one radian, and
/// grids are laid thousands of times a second. Without branches, so that the compiler can take
/// several modules at once; in single precision four of them.
template <class Number>
class Bending {
 public:
  explicit Bending(const Point& bend)
      : x_(static_cast<Number>(bend.x)), y_(static_cast<Number>(bend.y)) {
    const double square = bend.x * bend.x + bend.y * bend.y;
    if (square < 1e-12) return;
    by_square_ = static_cast<Number>(1 / square);
    by_length_ = static_cast<Number>(1 / std::sqrt(square));
  }

  struct Place {
    Number x, y;   // where the point comes to lie, seen along the depth
    Number depth;  // modules away from the camera
  };
  [[nodiscard]] Place operator()(Number x, Number y) const {
    const Number angle = x * x_ + y * y_, square = angle * angle;
    const Number sine_rest = -one / 6 + square / 120;
    const Number cosine_rest = one / 2 - square * (one / 24 - square / 720);
    const Number shift = angle * square * sine_rest * by_square_;
    return {x + x_ * shift, y + y_ * shift, square * cosine_rest * by_length_};
  }

 private:
  static constexpr Number one = 1;
  Number x_, y_;
  Number by_square_ = 0, by_length_ = 0;  // 1 / curvature^2 and 1 / curvature; 0 when flat
};

}  // namespace rackside
