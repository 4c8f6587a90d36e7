#pragma once
// The distribution of a forecast between the quantiles that it tells.

#include "core/forecast/forecast.hpp"

namespace rackside {

/// How likely the next moult is to have happened by `day` (days after `as_of`), 0 to 1. Straight
/// lines between the quantiles; the outer twentieths go on as steeply as the quantiles next to
/// them.
[[nodiscard]] double probability_by(const Forecast& forecast, double day);

/// The quantile at 0.05, 0.10 ... 0.95.
[[nodiscard]] double quantile(const Forecast& forecast, double probability);

}  // namespace rackside
