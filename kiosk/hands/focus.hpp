#pragma once
// Where the arrow keys stand. Every target can be reached with them and acted on with Enter.

#include <optional>

#include "kiosk/scene/scene.hpp"

namespace rackside::kiosk {

enum class Direction { Left, Right, Up, Down };

/// The target to go to from `from` (none: from the top left): the nearest one that lies in that
/// direction; where there is none, the next or previous one in order, round the end.
[[nodiscard]] std::optional<std::size_t> next_focus(const Scene& scene,
                                                    std::optional<std::size_t> from,
                                                    Direction direction);

}  // namespace rackside::kiosk
