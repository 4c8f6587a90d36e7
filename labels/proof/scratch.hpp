#pragma once
// Where a label gets its scratch.

#include "core/code/code.hpp"

namespace rackside {

/// A straight line across a symbol.
struct ScratchLine {
  double angle;   // radians
  double beside;  // modules by which it passes the middle
};

/// Other codes, other scratches. None through a finder pattern: that can hide any symbol from a
/// plain reader, however well it was printed, and says nothing about the label. `side` in modules.
[[nodiscard]] ScratchLine scratch_of(const Code& code, int side);

}  // namespace rackside
