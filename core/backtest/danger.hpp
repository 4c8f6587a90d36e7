#pragma once
// A decision the forecast serves: whether to withhold a meal.

#include <vector>

#include "core/backtest/backtest.hpp"

namespace rackside {

/// One meal that would be offered on a day of the backtest.
struct Meal {
  double chance_of_danger = 0;  // as the forecast tells it
  bool two_refusals = false;    // the last two offers were not taken
  bool dangerous = false;       // as it turned out
};

/// The chance that today is within danger_days of a moult, before or after, from a forecast.
[[nodiscard]] double chance_of_danger(const Forecast& forecast);

[[nodiscard]] bool refused_twice(const Evidence& animal);

[[nodiscard]] DangerScore score_meals(std::vector<Meal> meals);

}  // namespace rackside
