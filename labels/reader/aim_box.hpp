#pragma once
// The aim in the pixels of one frame.

#include "labels/reader/aim.hpp"
#include "labels/reader/geometry.hpp"

namespace rackside {

struct AimBox {
  int left, top, width, height;  // px, inside the frame
  [[nodiscard]] Point middle() const { return {left + width / 2.0, top + height / 2.0}; }
};
/// Moved so far inwards that none of it lies outside the frame.
[[nodiscard]] AimBox aim_box(const Aim& aim, int width, int height);

/// The aim that is really meant in such frames: the middle and the size of its box.
[[nodiscard]] Aim aim_inside(const Aim& aim, int width, int height);

}  // namespace rackside
