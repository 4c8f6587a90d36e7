#pragma once
// The cycle that runs: what has been observed since the last moult on record.

#include "core/forecast/belief.hpp"
#include "core/forecast/evidence.hpp"

namespace rackside {

/// Observations later than `now` (on the same day) count as made now. Those in `left_out`, and the
/// visits they were, are passed over as though nobody had written them down.
[[nodiscard]] RunningCycle running_cycle(const Evidence& evidence, const Character& character,
                                         double now, std::span<const EventId> left_out = {});

/// Where the observations of the running cycle begin in `evidence.observations`; `steps[i]` of the
/// cycle belongs to the observation that many places on.
[[nodiscard]] std::size_t first_of_running(const Evidence& evidence);

}  // namespace rackside
