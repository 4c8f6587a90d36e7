#pragma once
// The numbers of the lengths' model that are fitted, as a vector on the scales they are fitted on,
// each with its prior.

#include <vector>

#include "core/forecast/level.hpp"

namespace rackside {

/// The parameters before the log has said anything.
[[nodiscard]] LevelParameters prior_parameters(const CyclePriors& priors);

/// What meals are usual before the log has said anything.
[[nodiscard]] UsualMeals usual_meals(const MealPriors& priors);

/// The starts of all stages first, then the others.
[[nodiscard]] std::vector<double> to_vector(const LevelParameters& parameters);
[[nodiscard]] LevelParameters from_vector(const std::vector<double>& vector,
                                          const CyclePriors& priors, const LevelParameters& others);
/// Where in the vector it stands.
[[nodiscard]] std::size_t place_of(double LevelParameters::*member);

[[nodiscard]] double log_prior(const std::vector<double>& vector, const CyclePriors& priors);

}  // namespace rackside
