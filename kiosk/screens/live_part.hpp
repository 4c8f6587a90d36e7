#pragma once
// Where the camera's picture goes.

#include "kiosk/scene/geometry.hpp"

namespace rackside::kiosk {

/// The largest box of the picture's shape in the middle of `box`, on whole pixels.
[[nodiscard]] Box picture_place(const Box& box, int width, int height);

}  // namespace rackside::kiosk
