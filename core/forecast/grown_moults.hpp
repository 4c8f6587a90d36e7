#pragma once
// What the moults of one grown animal say for a season and against it.

#include <array>
#include <vector>

#include "core/forecast/collection_model.hpp"
#include "core/forecast/history.hpp"
#include "core/forecast/season.hpp"

namespace rackside {

/// How many times as far lengths are tried to scatter in a season (Season::loosened).
inline constexpr std::array season_loosenings{1.0, 1.5, 2.5};

/// A moult on record, beside the parts of the year in which it might as well have been, going by
/// lengths that keep to a season: for each loosening as many.
struct GrownMoult {
  static constexpr std::size_t narrow = 25, wide = 15;  // of each component of a length
  using PerLoosening = std::array<double, season_loosenings.size()>;

  std::size_t part = 0;      // of the year
  double by_lengths = 0;     // log density, without a season
  PerLoosening in_season{};  // the same by lengths that keep to one, wherever it is
  std::array<std::array<std::size_t, narrow + wide>, season_loosenings.size()> others{};
  std::array<double, narrow + wide> weights{};  // of the others, sum 1
};

/// Whether the cycle at hand is that of a grown animal, which may keep to a season.
[[nodiscard]] bool is_grown(Stage stage, const LevelFilter& filter);

/// Of one animal's moults, those that ended a grown animal's cycle.
[[nodiscard]] std::vector<GrownMoult> grown_moults(const CollectionModel& model,
                                                   const Evidence& animal,
                                                   const CycleHistory& history);

/// Log likelihoods of an animal's moults: by lengths alone, and for each time at which the season
/// may have its peak.
struct Explained {
  double by_lengths = 0;
  PeakWeights by_peak{};
};

[[nodiscard]] Explained explain(const std::vector<GrownMoult>& moults, const YearBell& bell,
                                std::size_t loosening);

}  // namespace rackside
