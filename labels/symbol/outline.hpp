#pragma once
// The edge of a symbol's dark areas, for vector output: far fewer points than one square a module,
// and no seams where modules touch.

#include <vector>

#include "labels/symbol/symbol.hpp"

namespace rackside {

/// Where lines between modules cross.
struct SymbolPoint {
  int x = 0;
  int y = 0;
  bool operator==(const SymbolPoint&) const = default;
};

/// Closed paths along the lines between modules, corners only, dark on the right hand. To be filled
/// together.
[[nodiscard]] std::vector<std::vector<SymbolPoint>> outlines_of(const Symbol& symbol);

}  // namespace rackside
