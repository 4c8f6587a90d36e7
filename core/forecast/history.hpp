#pragma once
// An animal's moults on record as cycle lengths for the level filter.

#include "core/forecast/evidence.hpp"
#include "core/forecast/growth_clock.hpp"
#include "core/forecast/level.hpp"

namespace rackside {

/// A moult's span is wide if it is more than this share of a cycle. Not knowing where in it the
/// moult was is then a spread of the log of about 0.09, near that within animals.
inline constexpr double wide_span = 0.3;

/// The cycles that a moult on record ended, the first of them from the arrival on. Lengths are in
/// days of `clock`.
[[nodiscard]] CycleHistory finished_cycles(const Evidence& evidence, const GrowthClock& clock);

/// With the one that was running when the log, or the animal's time here, ended: nothing was seen
/// of its end, which is worth knowing too.
[[nodiscard]] CycleHistory all_cycles(const Evidence& evidence, const GrowthClock& clock,
                                      double as_of);

}  // namespace rackside
