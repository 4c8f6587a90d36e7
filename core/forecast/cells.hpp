#pragma once
// The days on which the next moult may be, and how likely each was before anything was observed in
// the cycle that runs.

#include "core/forecast/belief.hpp"

namespace rackside {

struct Cells {
  std::vector<MoultCell> cells;  // a day wide near the present, wider far off; `as_of` is a bound
  std::size_t past = 0;          // so many of them lie before `as_of`
};

[[nodiscard]] Cells lay_cells(const Character& character, const RunningCycle& cycle, double as_of);

}  // namespace rackside
