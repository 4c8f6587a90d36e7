#pragma once
// A finished cycle as a chain of its four phases: hardening, feeding, fasting, premoult. The end is
// known, so premoult begins where the law of its length, counted back from there, puts it.

#include "core/forecast/chain.hpp"
#include "core/forecast/steps.hpp"
#include "core/forecast/tally.hpp"

namespace rackside {

using AppetiteChain = Chain<appetites>;

/// Chances to move between two observations.
struct Move {
  double leaves_hard = 0;
  double enters_premoult = 0;
  Change change;
};

struct CycleChain {
  std::vector<double> days;  // of the observations
  std::vector<Move> moves;   // each since the observation before
  AppetiteChain::Pass pass;
};

[[nodiscard]] CycleChain chain_of(const FinishedCycle& cycle, const Habits& habits, SignSet mute);

}  // namespace rackside
