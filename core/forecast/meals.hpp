#pragma once
// How often an animal was fed: more food brings the next moult sooner.

#include <span>
#include <vector>

#include "core/forecast/evidence.hpp"
#include "core/forecast/level.hpp"
#include "core/forecast/priors.hpp"

namespace rackside {

/// For each cycle between moults on record, the first from the arrival on and the last the one that
/// runs. Only meals with nothing refused between them count, so that appetite that goes for a
/// moult, seen or not, is not taken for hunger. What is much longer than usual for this animal (a
/// keeper away, a record not kept) counts as a few usual gaps. As though those `left_out` had not
/// been written down.
[[nodiscard]] std::vector<MealGaps> meals_by_cycle(const Evidence& evidence,
                                                   const MealPriors& priors,
                                                   std::span<const EventId> left_out = {});

}  // namespace rackside
