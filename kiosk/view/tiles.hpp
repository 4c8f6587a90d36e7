#pragma once
// Which tiles stand on the tub screen, and in which order: what is needed most in this phase of
// the cycle comes first. The order is fixed for a phase, so that a thumb learns it.

#include <vector>

#include "core/action/action.hpp"
#include "core/forecast/forecast.hpp"
#include "kiosk/model/model.hpp"

namespace rackside::kiosk {

/// Every action but undo, once.
[[nodiscard]] const std::vector<Action>& tile_order(Phase phase);

/// How many of the first tiles stand out.
inline constexpr std::size_t first_tiles = 2;

/// What an entry of this kind is likely to have been instead, when it was a mistake.
[[nodiscard]] const std::vector<Action>& likely_instead(RecordFilter kind);

}  // namespace rackside::kiosk
