#pragma once
// From the picture around each module to how dark the module itself is: a linear filter that each
// symbol teaches by its own known modules, so that blur, a moving hand, spreading ink and
// over-sharpening lenses undo themselves. See reading.md.

#include <array>
#include <vector>

#include "labels/reader/plane.hpp"
#include "labels/reader/warp.hpp"
#include "labels/symbol/symbol_layout.hpp"

namespace rackside {

struct Beliefs {
  std::vector<float> ink;  // of each module, row by row: 1 is surely ink, -1 surely paper
  float rest = 1;          // what the known modules still differ by, root mean square
};

/// Modules under glare come out as 0: they say nothing.
[[nodiscard]] Beliefs equalised(const Plane& plane, const Warp& warp, const SymbolLayout& layout);

/// The mask that the format information speaks for most, and then the next one.
[[nodiscard]] std::array<int, 2> likely_masks(const Beliefs& beliefs, const SymbolLayout& layout);

/// One number a bit, as decode_softly wants them. Bits under glare say nothing.
[[nodiscard]] std::vector<float> bit_beliefs(const Beliefs& beliefs, const SymbolLayout& layout,
                                             int mask);

}  // namespace rackside
