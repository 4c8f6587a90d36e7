#pragma once
// Smooth lines and filled shapes through Cairo; SDL itself draws stairs.

#include <vector>

#include "kiosk/draw/sdl_handles.hpp"
#include "kiosk/scene/mark.hpp"
#include "kiosk/scene/palette.hpp"
#include "kiosk/scene/scene.hpp"

namespace rackside::kiosk {

/// The pixels a path touches.
[[nodiscard]] SDL_Rect bounds_of(const Path& path);

/// `path` on a transparent ground, the size of its bounds.
[[nodiscard]] Surface paint(const Path& path, Colour colour);

/// `mark` with strokes of `width` pixels on a transparent square of `side` pixels.
[[nodiscard]] Surface paint(Mark mark, int side, double width, Colour colour);

}  // namespace rackside::kiosk
