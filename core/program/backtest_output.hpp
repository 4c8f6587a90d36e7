#pragma once
// A backtest as rackside-log prints it.

#include <string>

#include "core/backtest/backtest.hpp"

namespace rackside::program {

[[nodiscard]] std::string backtest_text(const BacktestReport& report);

}  // namespace rackside::program
