#pragma once
// How one species differs from the collection, by its own animals.

#include <span>

#include "core/forecast/level_fit.hpp"

namespace rackside {

/// Of some animals' histories.
[[nodiscard]] double log_likelihood(std::span<const CycleHistory> animals,
                                    const LevelParameters& parameters, const SpeciesShift& shift);

/// What a slow or a fast grower's level has to itself before its animals have said anything.
[[nodiscard]] double growth_of(const std::string& species, const CyclePriors& priors);

/// The mode of one species' three numbers with their variances, the rest given.
[[nodiscard]] SpeciesShift fit_shift(const SpeciesHistories& species,
                                     const LevelParameters& parameters, const CyclePriors& priors,
                                     const SpeciesShift& from);

/// The shift as numbers alone: variances are for forecasts, not for the fit.
[[nodiscard]] SpeciesShift without_variance(const SpeciesShift& shift);

}  // namespace rackside
