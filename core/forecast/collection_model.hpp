#pragma once
// What a whole collection's log has taught: fitted once, then every animal is forecast from it.

#include <map>
#include <optional>
#include <span>
#include <string>

#include "core/forecast/belief.hpp"
#include "core/forecast/evidence.hpp"
#include "core/forecast/habits.hpp"
#include "core/forecast/level_fit.hpp"

namespace rackside {

struct CollectionModel {
  LevelModel levels;
  HabitCounts counts;                          // of the whole collection
  std::array<HabitCounts, 2> fasts;            // growing animals, adults: only their fasts are used
  std::map<std::string, HabitCounts> species;  // counts of each
  std::optional<double> warmth_threshold;      // none: thermal time did not help
  YearlyWave wave;                             // of growth, where warmth does not explain it
  Season season;                               // of grown animals
  std::map<std::string, PeakWeights> species_peaks;
  std::size_t moults = 0;  // that it was learnt from

  [[nodiscard]] GrowthClock clock_of(const Evidence& evidence) const;
  /// Habits of an animal of this species and stage of which nothing is known yet.
  [[nodiscard]] Habits habits_of(const std::string& species, Stage stage) const;
  /// What is known of this animal.
  [[nodiscard]] Character character_of(const Evidence& evidence) const;
};

/// The model before any log.
[[nodiscard]] CollectionModel untaught_model();

/// Learns from all animals' evidence up to wall day `as_of` (that of animals that died or left is
/// welcome). Large collections are learnt from a sample of animals of every species, so the cost
/// does not grow without end. `before`, where given, is where the fit starts from.
[[nodiscard]] CollectionModel learn(std::span<const Evidence> animals, double as_of,
                                    const CollectionModel* before = nullptr);

}  // namespace rackside
