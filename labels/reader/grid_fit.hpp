#pragma once
// How well a symbol's grid lies on a picture, and moving it until it lies best.

#include <array>

#include "labels/reader/grid_sampling.hpp"
#include "labels/reader/time_left.hpp"
#include "labels/symbol/symbol_layout.hpp"

namespace rackside {

/// What paper and ink look like across the symbol, from the three finder patterns.
struct Tones {
  std::array<float, 3> middle{};    // half way between, at top left and its changes per module
  std::array<float, 3> contrast{};  // half the difference, likewise
  float strongest = 0;              // half contrast of the best finder pattern
  int finders = 0;                  // how many of the three are to be seen

  /// -1 is paper, 1 is ink.
  [[nodiscard]] float ink(float value, int column, int row) const {
    const auto x = static_cast<float>(column), y = static_cast<float>(row);
    return (middle[0] + middle[1] * x + middle[2] * y - value) /
           (contrast[0] + contrast[1] * x + contrast[2] * y);
  }
};

[[nodiscard]] Tones tones_of(const ModuleSamples& samples, const SymbolLayout& layout);

/// 1 when everything that is known about every symbol is where it should be and all other modules
/// are clearly dark or light; about 0 on anything else.
[[nodiscard]] float grid_score(const ModuleSamples& samples, const SymbolLayout& layout);
[[nodiscard]] float grid_score(const Plane& plane, const WarpShape& shape,
                               const SymbolLayout& layout);

/// Moves `shape` to where the score is best nearby; that score. `rounds` sweeps at most, fewer when
/// time runs out.
enum class Surface { Flat, Bent };
float fit_grid(const Plane& plane, WarpShape& shape, const SymbolLayout& layout, Surface surface,
               int rounds, const TimeLeft& time_left);

}  // namespace rackside
