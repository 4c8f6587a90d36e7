#pragma once
// What a finished cycle tells of habits: the expectation step of their learning.

#include <span>

#include "core/forecast/habits.hpp"
#include "core/forecast/steps.hpp"

namespace rackside {

/// A cycle between two moults on record, with what was observed in it.
struct FinishedCycle {
  double begins = 0, ends = 0;  // wall days of the moults
  std::span<const Observation> observations;
};

/// Expected counts under `habits`, by a forward-backward pass over the four phases with the end of
/// the cycle given. The entry into premoult is where its length law puts it, counted back from the
/// end; lengths are learnt from the interval between two observations in which the entry falls.
[[nodiscard]] HabitCounts tally(const FinishedCycle& cycle, const Habits& habits, SignSet mute);

}  // namespace rackside
