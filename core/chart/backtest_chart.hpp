#pragma once
// The picture of a backtest: errors beside the rules of thumb, reliability of the premoult calls,
// and where outcomes fell in the forecasts.

#include <filesystem>

#include "core/backtest/backtest.hpp"

namespace rackside {

/// Writes an SVG or a PNG, by the file's ending. Errors: BadInput for another ending, Broken when
/// the file cannot be written.
[[nodiscard]] Result<void> draw_backtest(const BacktestReport& report,
                                         const std::filesystem::path& file);

}  // namespace rackside
