#pragma once
// Whether grown animals of this collection moult at a season, and at which.

#include "core/forecast/collection_model.hpp"
#include "core/forecast/fit_sample.hpp"
#include "core/forecast/history.hpp"

namespace rackside {

/// Fills in `model.season` and `model.species_peaks`: a bell around one time of the year for each
/// species, as sharp for all, by likelihood beside lengths alone; none where it does not explain
/// clearly more (MODEL.md, "Season").
void learn_seasons(CollectionModel& model, const FitSample& sample);

/// The season of one animal, whose filter `now` has followed its history: at its species' time, and
/// as likely as its own moults have it. Kept with chance 0 where its cycles are not yet those of a
/// grown animal.
[[nodiscard]] Season season_of(const CollectionModel& model, const Evidence& evidence,
                               const CycleHistory& history, const LevelFilter& now);

}  // namespace rackside
