#pragma once
// Where two pictures differ, so that only that is drawn again. The panel is looked at in small
// squares; a square differs when the things that reach into it, in their order, are not the same
// ones. That holds also for things that only changed places.

#include <vector>

#include "kiosk/scene/panel.hpp"
#include "kiosk/scene/scene.hpp"

namespace rackside::kiosk {

/// What an item may colour, a little more rather than less.
[[nodiscard]] Box reach_of(const Item& item);

/// Whole pixels, none of them twice, within the panel; empty when the pictures look the same.
[[nodiscard]] std::vector<Box> damage(const Scene& before, const Scene& after, const Panel& panel);

}  // namespace rackside::kiosk
