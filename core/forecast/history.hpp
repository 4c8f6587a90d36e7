#pragma once
// An animal's moults on record as cycle lengths for the level filter.

#include "core/forecast/evidence.hpp"
#include "core/forecast/growth_clock.hpp"
#include "core/forecast/level.hpp"

namespace rackside {

/// The cycles that a moult on record ended, the first of them from the arrival on. Lengths are in
/// days of `clock`.
[[nodiscard]] CycleHistory finished_cycles(const Evidence& evidence, const GrowthClock& clock);

/// With the one that was running when the log, or the animal's time here, ended: nothing was seen
/// of its end, which is worth knowing too.
[[nodiscard]] CycleHistory all_cycles(const Evidence& evidence, const GrowthClock& clock,
                                      double as_of);

}  // namespace rackside
