#pragma once
// How each mark is drawn, in a unit square.

#include "kiosk/scene/mark.hpp"

namespace rackside::kiosk {

using Drawing = std::vector<Stroke>;

[[nodiscard]] Drawing drawing_of(Mark mark);

}  // namespace rackside::kiosk
