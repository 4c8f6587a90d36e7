#pragma once
// What else a camera sees in a rack room: boards, print, wire mesh.

#include "tests/generators/optics.hpp"

namespace rackside::tests {

/// Covers `light` with random boards, lines of print-like strokes and mesh; `amount` 0..1.
void scatter(Light& light, double amount, Random& random);

}  // namespace rackside::tests
