#pragma once
// Module patterns by libqrencode, and random codes of ours to put into them.

#include <cstdint>
#include <random>
#include <string>
#include <vector>

#include "core/code/code.hpp"

namespace rackside::tests {

/// Dark and light modules, row by row, without the quiet zone.
struct Modules {
  int side = 0;
  std::vector<std::uint8_t> dark;  // 1 = dark

  [[nodiscard]] bool at(int column, int row) const {
    if (column < 0 || row < 0 || column >= side || row >= side) return false;
    return dark[static_cast<std::size_t>(row * side + column)] != 0;
  }
};

using Random = std::mt19937_64;

/// `text` in error correction level H, at least `version`.
[[nodiscard]] Modules symbol_of(const std::string& text, int version);
/// Any code that could have been issued, of any kind.
[[nodiscard]] Code random_code(Random& random);
/// The same symbol as if seen in a mirror, or with dark and light exchanged.
[[nodiscard]] Modules mirrored(const Modules& modules);
[[nodiscard]] Modules inverted(const Modules& modules);

}  // namespace rackside::tests
