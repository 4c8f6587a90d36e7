#include "core/forecast/species_shift.hpp"

#include <algorithm>

#include "core/forecast/maximise.hpp"

namespace rackside {

double log_likelihood(std::span<const CycleHistory> animals, const LevelParameters& parameters,
                      const SpeciesShift& shift) {
  double sum = 0;
  for (const CycleHistory& animal : animals) {
    LevelFilter filter(parameters, shift, animal.stage, animal.instar);
    sum += follow(filter, animal);
  }
  return sum;
}

double growth_of(const std::string& species, const CyclePriors& priors) {
  switch (traits_of(species).growth) {
    case Growth::Slow: return priors.slow_grower;
    case Growth::Fast: return -priors.slow_grower;
    case Growth::Unknown: return 0;
  }
  return 0;
}

SpeciesShift fit_shift(const SpeciesHistories& species, const LevelParameters& parameters,
                       const CyclePriors& priors, const SpeciesShift& from) {
  const double growth = growth_of(species.species, priors);
  const std::array spreads{priors.species_level, priors.species_drift, priors.species_adult};
  const Objective objective = [&](const std::vector<double>& at) {
    double penalty = 0;
    for (std::size_t i = 0; i < spreads.size(); ++i) {
      const double z = (at[i] - (i == 0 ? growth : 0)) / spreads[i];
      penalty += z * z / 2;
    }
    return log_likelihood(species.animals, parameters, {at[0], at[1], at[2]}) - penalty;
  };
  const std::vector<double> at = maximise(
      objective, {from.level, from.drift, from.adult},
      {.most_steps = 8, .tolerance = 0.01, .step = 1e-4, .differences = Differences::Forward});
  const auto variance = [&](std::size_t i) {
    return 1 / std::max(1 / (spreads[i] * spreads[i]), -curvature(objective, at, i));
  };
  return {at[0], at[1], at[2], variance(0), variance(1), variance(2)};
}

SpeciesShift without_variance(const SpeciesShift& shift) {
  return {shift.level, shift.drift, shift.adult};
}

}  // namespace rackside
