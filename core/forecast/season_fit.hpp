#pragma once
// Whether adults of this collection moult at a season, and at which.

#include <span>

#include "core/forecast/collection_model.hpp"

namespace rackside {

/// Fills in `model.season` and `model.species_season`: a tilt of each day's chance by the season,
/// by conditional likelihood given the lengths, shrunk to none (MODEL.md, "Seasons").
void learn_seasons(CollectionModel& model, std::span<const Evidence* const> sample);

}  // namespace rackside
