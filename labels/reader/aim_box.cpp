#include "labels/reader/aim_box.hpp"

#include <algorithm>

namespace rackside {

AimBox aim_box(const Aim& aim, int width, int height) {
  const int side = std::clamp(static_cast<int>(aim.side * height), 1, std::min(width, height));
  const auto start = [side](double middle, int extent) {
    return std::clamp(static_cast<int>(middle * extent) - side / 2, 0, extent - side);
  };
  return {start(aim.x, width), start(aim.y, height), side, side};
}

Aim aim_inside(const Aim& aim, int width, int height) {
  const double side = std::min({aim.side, 1.0, static_cast<double>(width) / height});
  const double half_high = side / 2, half_wide = half_high * height / width;
  return {std::clamp(aim.x, half_wide, 1 - half_wide), std::clamp(aim.y, half_high, 1 - half_high),
          side};
}

}  // namespace rackside
