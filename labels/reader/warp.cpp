#include "labels/reader/warp.hpp"

#include <algorithm>
#include <cmath>

namespace rackside {
namespace {

// The homography of the unit square's corners, in closed form (Heckbert 1989, 2.2.3).
std::array<double, 9> from_unit_square(const Quadrilateral& q) {
  const double sx = q[0].x - q[1].x + q[2].x - q[3].x, sy = q[0].y - q[1].y + q[2].y - q[3].y;
  const double x1 = q[1].x - q[2].x, x2 = q[3].x - q[2].x;
  const double y1 = q[1].y - q[2].y, y2 = q[3].y - q[2].y;
  const double denominator = x1 * y2 - x2 * y1;
  const double g = (sx * y2 - x2 * sy) / denominator, h = (x1 * sy - sx * y1) / denominator;
  return {q[1].x - q[0].x + g * q[1].x,
          q[3].x - q[0].x + h * q[3].x,
          q[0].x,
          q[1].y - q[0].y + g * q[1].y,
          q[3].y - q[0].y + h * q[3].y,
          q[0].y,
          g,
          h,
          1};
}

struct Affine {
  double a = 1, b = 0, c = 0, d = 1, x = 0, y = 0;  // (a b; c d) p + (x, y)
};

Affine affine_through(const std::array<Point, 3>& from, const std::array<Point, 3>& to) {
  const double ux = from[1].x - from[0].x, uy = from[1].y - from[0].y;
  const double vx = from[2].x - from[0].x, vy = from[2].y - from[0].y;
  const double scale = 1 / (ux * vy - uy * vx);
  const Point p{to[1].x - to[0].x, to[1].y - to[0].y}, q{to[2].x - to[0].x, to[2].y - to[0].y};
  Affine result{(p.x * vy - q.x * uy) * scale,
                (q.x * ux - p.x * vx) * scale,
                (p.y * vy - q.y * uy) * scale,
                (q.y * ux - p.y * vx) * scale,
                0,
                0};
  result.x = to[0].x - result.a * from[0].x - result.b * from[0].y;
  result.y = to[0].y - result.c * from[0].x - result.d * from[0].y;
  return result;
}

// What tilts a square into this affine picture of it: pixels a module, how depth changes along the
// symbol's own axes, and how depth moves a point in the picture.
struct Tilt {
  double scale;
  Point depth;
  Point lift;
};

Tilt tilt_of(const Affine& m, double sign) {
  const double uu = m.a * m.a + m.c * m.c, vv = m.b * m.b + m.d * m.d, uv = m.a * m.b + m.c * m.d;
  // The greater singular value is the scale: along the axis of the tilt nothing is shortened.
  const double scale2 = (uu + vv + std::sqrt((uu - vv) * (uu - vv) + 4 * uv * uv)) / 2;
  const double scale = std::sqrt(scale2);
  double zu = std::sqrt(std::max(0.0, 1 - uu / scale2));
  double zv = std::sqrt(std::max(0.0, 1 - vv / scale2));
  if (uv > 0) zv = -zv;  // the two axes stay at a right angle in space
  zu *= sign;
  zv *= sign;
  const Point u{m.a / scale, m.c / scale}, v{m.b / scale, m.d / scale};
  // The normal, pointing away from the camera, is the cross product of the axes.
  return {scale, {zu, zv}, {scale * (u.y * zv - zu * v.y), scale * (zu * v.x - u.x * zv)}};
}

}  // namespace

Point Warp::operator()(double x, double y) const {
  const auto at = Bending<double>(bend)(x, y);
  const auto& m = plane;
  const double w = m[6] * at.x + m[7] * at.y + m[8];
  return {(m[0] * at.x + m[1] * at.y + m[2]) / w + lift.x * at.depth,
          (m[3] * at.x + m[4] * at.y + m[5]) / w + lift.y * at.depth};
}

Warp make_warp(const WarpShape& shape, double side) {
  const auto unit = from_unit_square(shape.corners);
  Warp warp{{}, shape.bend, shape.lift};
  for (std::size_t row = 0; row < 3; ++row) {  // the unit square is (p / side + 1 / 2)
    warp.plane[3 * row] = unit[3 * row] / side;
    warp.plane[3 * row + 1] = unit[3 * row + 1] / side;
    warp.plane[3 * row + 2] = unit[3 * row + 2] + (unit[3 * row] + unit[3 * row + 1]) / 2;
  }
  return warp;
}

WarpShape shape_through(const std::array<Point, 3>& modules, const std::array<Point, 3>& pixels,
                        double side, double focal, const WarpGuess& guess) {
  const Bending<double> bent(guess.bend);
  std::array<Point, 3> flat = modules, seen = pixels;
  std::array<double, 3> depths{};
  for (std::size_t i = 0; i < 3; ++i) {
    const auto at = bent(modules[i].x, modules[i].y);
    flat[i] = {at.x, at.y};
    depths[i] = at.depth;
  }
  Affine affine = affine_through(flat, seen);
  Tilt tilt{};
  const auto farness = [&](const Point& p) {
    return 1 + (tilt.depth.x * p.x + tilt.depth.y * p.y) * tilt.scale / focal;
  };
  for (int round = 0; round < 3; ++round) {  // the tilt depends on the affine part and back
    tilt = tilt_of(affine, guess.tilt_sign);
    for (std::size_t i = 0; i < 3; ++i) {
      // Both as the camera would see them without perspective, about the symbol's middle.
      const Point straight{pixels[i].x - tilt.lift.x * depths[i],
                           pixels[i].y - tilt.lift.y * depths[i]};
      seen[i] = {affine.x + (straight.x - affine.x) * farness(flat[i]),
                 affine.y + (straight.y - affine.y) * farness(flat[i])};
    }
    affine = affine_through(flat, seen);
  }
  WarpShape shape{{}, guess.bend, tilt.lift};
  const Point corner[] = {{-0.5, -0.5}, {0.5, -0.5}, {0.5, 0.5}, {-0.5, 0.5}};
  for (std::size_t i = 0; i < 4; ++i) {
    const Point p{corner[i].x * side, corner[i].y * side};
    shape.corners[i] = {affine.x + (affine.a * p.x + affine.b * p.y) / farness(p),
                        affine.y + (affine.c * p.x + affine.d * p.y) / farness(p)};
  }
  return shape;
}

}  // namespace rackside
