#pragma once
// How well a symbol's grid lies on a picture, and moving it until it lies best.

#include <vector>

#include "labels/reader/plane.hpp"
#include "labels/reader/symbol_layout.hpp"
#include "labels/reader/warp.hpp"

namespace rackside {

/// The picture at the middle of each module and of one ring of quiet zone around the symbol.
struct ModuleSamples {
  std::size_t stride = 0;
  std::vector<float> value;
  [[nodiscard]] float at(int column, int row) const {
    return value[static_cast<std::size_t>(row + 1) * stride + static_cast<std::size_t>(column + 1)];
  }
};

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

[[nodiscard]] ModuleSamples sample_modules(const Plane& plane, const Warp& warp, int side);
[[nodiscard]] Tones tones_of(const ModuleSamples& samples, const SymbolLayout& layout);

/// 1 when everything that is known about every symbol is where it should be and all other modules
/// are clearly dark or light; about 0 on anything else.
[[nodiscard]] float grid_score(const ModuleSamples& samples, const SymbolLayout& layout);
[[nodiscard]] float grid_score(const Plane& plane, const WarpShape& shape,
                               const SymbolLayout& layout);

/// Moves `shape` to where the score is best nearby; that score. `rounds` sweeps at most.
enum class Surface { Flat, Bent };
float fit_grid(const Plane& plane, WarpShape& shape, const SymbolLayout& layout, Surface surface,
               int rounds);

}  // namespace rackside
