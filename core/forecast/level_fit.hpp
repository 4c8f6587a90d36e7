#pragma once
// What the collection teaches about cycle lengths.

#include <map>
#include <span>
#include <string>
#include <vector>

#include "core/forecast/level.hpp"
#include "core/forecast/priors.hpp"
#include "core/forecast/traits.hpp"

namespace rackside {

struct SpeciesHistories {
  std::string species;
  std::vector<CycleHistory> animals;
};

struct LevelModel {
  LevelParameters parameters;
  std::array<double, stages> start_variance{};  // what is still unknown about `start`
  double drift_variance = 0;                    // ... about the drift of growing animals
  double scatter_variance = 0, adult_scatter_variance = 0;  // ... about the log of their scatter
  std::map<std::string, SpeciesShift> shifts;               // of species that were learnt from
  SpeciesShift unknown_species;                             // of any other: variances only
  double log_posterior = 0;

  /// Growth from the traits stands in for what was never seen.
  [[nodiscard]] SpeciesShift shift_of(const std::string& species) const;
  [[nodiscard]] LevelFilter filter(const std::string& species, Stage stage,
                                   std::optional<int> instar) const;
};

/// Of all histories under `model`.
[[nodiscard]] double log_likelihood(std::span<const SpeciesHistories> histories,
                                    const LevelModel& model);

/// Posterior mode of the parameters with the species' shifts, in turns (MODEL.md, "Lengths").
/// `start_from` makes a refit after a few new events cheap.
[[nodiscard]] LevelModel fit_levels(std::span<const SpeciesHistories> histories,
                                    const CyclePriors& priors,
                                    const LevelModel* start_from = nullptr);

}  // namespace rackside
