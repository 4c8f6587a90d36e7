#pragma once
// One animal's standing events read in their order, each for what it says of moults. Records that
// contradict others are left aside and named.

#include "core/forecast/evidence.hpp"

namespace rackside {

/// `added` is the event that says who the animal is, `told` all that stand.
[[nodiscard]] Evidence read_events(const Event& added, const std::vector<Event>& told,
                                   const Surroundings& surroundings);

}  // namespace rackside
