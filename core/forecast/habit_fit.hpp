#pragma once
// What finished cycles teach about habits: expectation and maximisation in turns, for the whole
// collection and its species, and a single expectation for one animal.

#include <span>

#include "core/forecast/collection_model.hpp"

namespace rackside {

/// What the last cycles of one animal say of it, under the habits that `model` expects of it.
/// Cycles that may have hidden a moult nobody saw count as little as that is likely.
[[nodiscard]] HabitCounts own_counts(const CollectionModel& model, const Evidence& evidence,
                                     const GrowthClock& clock);

/// Fills in `model.counts`, `model.fasts` and `model.species`; its levels are there already.
void learn_habits(CollectionModel& model, std::span<const Evidence* const> sample, int turns);

}  // namespace rackside
