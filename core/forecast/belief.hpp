#pragma once
// The cycle that runs, by enumeration: every day on which the next moult may be (or may have been,
// unseen) with every length of premoult, each weighed by all that was observed.

#include <optional>
#include <span>
#include <vector>

#include "core/forecast/level.hpp"
#include "core/forecast/opening.hpp"
#include "core/forecast/thermal_clock.hpp"

namespace rackside {

/// What has been learnt of one animal, and of its species and the collection where it is silent.
struct Character {
  LengthMixture length;       // of the cycle that runs, in days of `clock`
  LengthMixture next_length;  // of the one after it
  Habits habits;
  ThermalClock clock;
  double unseen_share = 0;      // of moults of which nobody ever finds a sign
  double noticed_a_visit = 1;   // chance that a visit notices a shed that is found at all
  std::array<double, 4> season{};  // log tilt: cosine and sine of the year, then of the half year
};

/// What has been observed since the last moult on record.
struct RunningCycle {
  double start_earliest = 0, start_latest = 0;  // of the last moult; of the arrival where none is
  bool from_arrival = false;
  std::vector<Step> steps;
  std::vector<double> visits;
};

/// Probability that the next moult after the last one on record falls between two wall days.
struct MoultCell {
  double from = 0, to = 0, probability = 0;
};

struct Belief {
  std::vector<MoultCell> cells;  // ascending, without gaps from the first to the last
  double p_premoult = 0;
  double p_hardening = 0;
  double p_fasting = 0;  // off food, but not for a moult
  double p_moulted_unseen = 0;
};

[[nodiscard]] Belief believe(const Character& character, const RunningCycle& cycle, double as_of);

/// How much likelier than on average a moult is on this day of the year; 1 where no season shows.
[[nodiscard]] double season_tilt(const std::array<double, 4>& season, double day);

/// The wall day before which the next moult is with probability `p`.
[[nodiscard]] double quantile(const Belief& belief, double p);

}  // namespace rackside
