#pragma once
// The keepers of the simulated year.

#include "tests/demo/collection/year_world.hpp"

namespace rackside::tests {

/// Feeds every animal when its stage's interval is over, whatever the record says; waits a week
/// after a shed he has found.
void calendar_keeper(YearWorld& world, Day day);
/// The same, but stops after two refusals in a row until a shed is found or three weeks are over.
void two_refusals_keeper(YearWorld& world, Day day);

using Forecaster = std::function<std::map<AnimalId, Forecast>(const YearWorld&, Instant)>;
/// Does what the plan says by `rules`, with the forecasts of `forecaster`.
[[nodiscard]] YearWorld::Keeper plan_keeper(Forecaster forecaster, RuleBook rules = {});

}  // namespace rackside::tests
