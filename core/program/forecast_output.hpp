#pragma once
// Forecasts as rackside-log prints them.

#include <string>

#include "core/forecast/evidence.hpp"
#include "core/forecast/forecast.hpp"

namespace rackside::program {

/// One JSON object in one line: animal, as_of, state, p_premoult, p_moulted_unseen, next_moult,
/// why.
[[nodiscard]] std::string forecast_json(const Forecast& forecast, const std::string& key,
                                        Day as_of);

/// The table's head, and one row with the chief reason below.
[[nodiscard]] std::string forecast_table_head();
[[nodiscard]] std::string forecast_table_row(const Forecast& forecast, const Evidence& evidence,
                                             Day as_of);

}  // namespace rackside::program
