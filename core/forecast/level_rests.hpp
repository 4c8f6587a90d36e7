#pragma once
// What the straight line of lengths leaves over, cycle by cycle, and what is learnt from that at
// once: the scale of all lengths, and the instars that are off the line.

#include <span>

#include "core/forecast/level_fit.hpp"

namespace rackside {

/// Brings all starts near the log at once, however far from the priors its animals are; the climb
/// from there is short.
void find_scale(LevelModel& model, std::span<const SpeciesHistories> histories);

/// Shrunken means of what is left over at each instar, given all the rest. How far instars are off
/// the line at all is learnt with them (expectation-maximisation); `spread` is the prior's.
void fit_instars(LevelModel& model, std::span<const SpeciesHistories> histories, double spread);

/// How often animals of a level are fed here, by a straight line that the priors hold.
void fit_usual_meals(LevelModel& model, std::span<const SpeciesHistories> histories);

}  // namespace rackside
