#include "tests/generators/pose.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "tests/generators/frames.hpp"

namespace rackside::tests {
namespace {

constexpr double half_view = std::numbers::pi / 6;  // 60 degrees across the frame
constexpr double around = 6;                        // modules beyond the symbol that are drawn

using Vector = std::array<double, 3>;

double dot(const Vector& a, const Vector& b) { return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]; }

// `v` turned by `angle` about the axis (cos, sin, 0) at `direction`: Rodrigues' formula.
Vector tilted(const Vector& v, double direction, double angle) {
  const Vector k{std::cos(direction), std::sin(direction), 0};
  const Vector cross{k[1] * v[2] - k[2] * v[1], k[2] * v[0] - k[0] * v[2],
                     k[0] * v[1] - k[1] * v[0]};
  Vector result;
  for (std::size_t i = 0; i < 3; ++i)
    result[i] = v[i] * std::cos(angle) + cross[i] * std::sin(angle) +
                k[i] * dot(k, v) * (1 - std::cos(angle));
  return result;
}

Vector turned(const Vector& v, double angle) {
  return {v[0] * std::cos(angle) - v[1] * std::sin(angle),
          v[0] * std::sin(angle) + v[1] * std::cos(angle), v[2]};
}

}  // namespace

Pose::Pose(const Scene& scene, double side, const Hand& hand)
    : middle_{scene.width / 2.0 + hand.x, scene.height / 2.0 + hand.y},
      roll_cos_(std::cos(hand.roll)),
      roll_sin_(std::sin(hand.roll)),
      focal_(scene.width / 2.0 / std::tan(half_view)),
      distance_(focal_ * scene.module_mm / scene.module_px),
      module_mm_(scene.module_mm),
      radius_(scene.radius_mm),
      half_side_(side / 2),
      reach_((side / 2 + around) * 1.42 * scene.module_px * 1.15) {
  const double tilt = scene.tilt * std::numbers::pi / 180;
  for (std::size_t i = 0; i < 3; ++i) {
    Vector axis{};
    axis[i] = 1;
    axes_[i] = turned(tilted(axis, hand.tilt_axis, tilt), hand.turn);
    eye_[i] = -distance_ * axes_[i][2];
  }
}

// The label in its own frame: x to the right, y down, z away from the camera; a cylinder bends
// away from the camera on both sides of its axis x = 0.
std::optional<Point> Pose::on_surface(const Vector& from, const Vector& along) const {
  if (radius_ <= 0) {
    const double t = -from[2] / along[2];
    return Point{from[0] + t * along[0], from[1] + t * along[1]};
  }
  const double z = from[2] - radius_;
  const double a = along[0] * along[0] + along[2] * along[2];
  const double b = from[0] * along[0] + z * along[2];
  const double c = from[0] * from[0] + z * z - radius_ * radius_;
  if (b * b < a * c) return std::nullopt;
  const double t = (-b - std::sqrt(b * b - a * c)) / a;
  return Point{radius_ * std::atan2(from[0] + t * along[0], -(z + t * along[2])),
               from[1] + t * along[1]};
}

std::optional<Point> Pose::label_point(Point pixel) const {
  const Vector ray{(pixel.x - middle_.x) / focal_, (pixel.y - middle_.y) / focal_, 1};
  const Vector along{dot(ray, axes_[0]), dot(ray, axes_[1]), dot(ray, axes_[2])};
  const auto hit = on_surface(eye_, along);
  if (!hit) return std::nullopt;
  const Point flat{hit->x * roll_cos_ + hit->y * roll_sin_,
                   hit->y * roll_cos_ - hit->x * roll_sin_};
  return Point{flat.x / module_mm_ + half_side_, flat.y / module_mm_ + half_side_};
}

Point Pose::picture_point(Point modules) const {
  const Point flat{(modules.x - half_side_) * module_mm_, (modules.y - half_side_) * module_mm_};
  Vector place{flat.x * roll_cos_ - flat.y * roll_sin_, flat.x * roll_sin_ + flat.y * roll_cos_, 0};
  if (radius_ > 0) {
    const double angle = place[0] / radius_;
    place = {radius_ * std::sin(angle), place[1], radius_ * (1 - std::cos(angle))};
  }
  Vector seen{0, 0, distance_};
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t k = 0; k < 3; ++k) seen[k] += place[i] * axes_[i][k];
  return {middle_.x + focal_ * seen[0] / seen[2], middle_.y + focal_ * seen[1] / seen[2]};
}

bool Pose::near_label(int x, int y) const {
  return std::abs(x - middle_.x) < reach_ && std::abs(y - middle_.y) < reach_;
}

}  // namespace rackside::tests
