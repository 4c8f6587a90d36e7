#pragma once
// The forecast against the truth of an invented world, beside two oracles and a rule of thumb.

#include "tests/core/forecast/world.hpp"

namespace rackside::tests {

struct Verdict {
  int forecasts = 0, left_out = 0;  // left out: an oracle itself was unsure of its own answer
  double crps = 0, oracle_crps = 0, rule_crps = 0;
  double brier = 0, oracle_brier = 0;
  double past_crps = 0, past_brier = 0;    // of the oracle that knows an animal by its past
  double in_half = 0, in_nine_tenths = 0;  // share inside the 50 % and 90 % ranges
  double oracle_in_half = 0, oracle_in_nine_tenths = 0, past_in_nine_tenths = 0;
  double mean_unseen = 0, truly_unseen = 0;
};

struct Trial {
  int animals = 60;
  double days = 4 * 365;
  int dates = 4;  // at which forecasts are made, over the last half of the time
  std::uint64_t seed = 1;
  int paths = 3000;
};

[[nodiscard]] Verdict judge(const World& world, const Trial& trial);

/// Worlds that differ from the model and from each other.
[[nodiscard]] std::vector<World> worlds();

}  // namespace rackside::tests
