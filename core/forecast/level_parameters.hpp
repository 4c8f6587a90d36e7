#pragma once
// The numbers that say how long cycles are: those of a collection, and how a species differs.

#include <array>

#include "core/event/details.hpp"
#include "core/forecast/priors.hpp"

namespace rackside {

inline constexpr std::size_t instars = 16;  // later ones are as the last

/// The log of the days from meal to meal that is usual at a level.
struct UsualMeals {
  double log_gap = 0, with_level = 0;

  [[nodiscard]] double at(double level) const { return log_gap + with_level * level; }
};

struct LevelParameters {
  std::array<double, stages> start{};  // mean log length of the first cycle here, by stage
  double start_spread = 0;             // between animals of one species and stage
  double known_start_spread = 0;       // the same where the instar is known
  double per_instar = 0;
  double drift = 0;        // of growing animals, a moult
  double adult_drift = 0;  // of those that came as adults
  double pull = 0;         // the drift falls by this much for each unit of level above pull_at
  double pull_at = 0;
  double wander = 0;
  double within = 0;        // of growing animals
  double adult_within = 0;  // of those that came as adults
  double wide_share = 0, wide_factor = 1;
  double wide_lean = 0;  // of the log: what is out of line is rather too long than too short
  double unseen_share = 0;
  double food = 0;  // what scarcity of meals adds to the log length, a unit of its own logarithm
  UsualMeals meals;
  std::array<double, stages> instar_reference{};
  /// What a straight drift misses at an instar that is known: some are longer than both neighbours.
  std::array<double, instars> at_instar{};
  std::array<double, instars> at_instar_variance{};  // for forecasts, not for the fit
};

/// How one species differs from the collection.
struct SpeciesShift {
  double level = 0, drift = 0;  // of growing animals
  double adult = 0;             // what is added to `level` for those that came as adults
  double level_variance = 0, drift_variance = 0, adult_variance = 0;
  double scatter_variance = 0;  // of the log of the scatter that lengths are believed to have
};

}  // namespace rackside
