#pragma once

#include "core/program/command.hpp"

namespace rackside::program {

/// Replays the log as it stood on past days and says how good the forecasts would have been.
[[nodiscard]] Command add_backtest_command(Vocabulary& parser);

}  // namespace rackside::program
