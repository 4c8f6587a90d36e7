#pragma once
// The cycle that runs, by enumeration: every day on which the next moult may be (or may have been,
// unseen) with every length of premoult, each weighed by all that was observed.

#include <optional>
#include <vector>

#include "core/forecast/growth_clock.hpp"
#include "core/forecast/level.hpp"
#include "core/forecast/opening.hpp"
#include "core/forecast/season.hpp"

namespace rackside {

/// How long the cycle that runs is, in days of the animal's clock.
struct Lengths {
  LengthMixture all;
  std::vector<SpanPart> by_part;  // of the last moult's span, where that is wide; else empty
};

/// What has been learnt of one animal, and of its species and the collection where it is silent.
struct Character {
  Lengths lengths;
  Lengths in_season;          // the same if it keeps to `season`
  LengthMixture next_length;  // of the cycle after the one that runs
  bool wide_span = false;     // the last moult's
  /// What the lengths come from, before the meals of the cycle that runs; it refers to the model's
  /// numbers.
  std::optional<LevelFilter> unfed;
  Habits habits;
  GrowthClock clock;
  double unseen_share = 0;     // of moults of which nobody ever finds a sign
  double noticed_a_visit = 1;  // chance that a visit notices a shed that is found at all
  Season season;
};

/// Its lengths had it been fed so in the cycle that runs.
[[nodiscard]] Character fed(Character character, const MealGaps& meals);

/// What has been observed since the last moult on record.
struct RunningCycle {
  double start_earliest = 0, start_latest = 0;  // of the last moult; of the arrival where none is
  bool from_arrival = false;
  std::vector<Step> steps;
  std::vector<double> visits;

  [[nodiscard]] double start() const { return (start_earliest + start_latest) / 2; }
};

/// Probability that the next moult after the last one on record falls between two wall days.
struct MoultCell {
  double from = 0, to = 0, probability = 0;

  [[nodiscard]] double middle() const { return (from + to) / 2; }
};

struct Belief {
  std::vector<MoultCell> cells;  // ascending, without gaps from the first to the last
  double p_premoult = 0;
  double p_hardening = 0;
  double p_fasting = 0;  // off food, but not for a moult
  double p_moulted_unseen = 0;
};

[[nodiscard]] Belief believe(const Character& character, const RunningCycle& cycle, double as_of);

/// The wall day before which the next moult is with probability `p`.
[[nodiscard]] double quantile(const Belief& belief, double p);

}  // namespace rackside
