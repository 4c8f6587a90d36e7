#pragma once
// A QR symbol (ISO/IEC 18004) as a square of modules. Our codes use version 1 or 2 at the highest
// error correction level, which gives back up to 30 % of the codewords.

#include <cstdint>
#include <string_view>
#include <vector>

#include "core/code/code.hpp"

namespace rackside {

enum class SymbolVersion { V1, V2 };
enum class ErrorCorrection { L, M, Q, H };

/// Modules of white that belong to a symbol on every side (ISO/IEC 18004, 6.3.8).
inline constexpr int quiet_zone = 4;

struct Symbol {
  int side = 0;                    // modules, without the quiet zone
  std::vector<std::uint8_t> dark;  // side * side, row by row; 1 is dark

  [[nodiscard]] bool is_dark(int x, int y) const {
    return dark[static_cast<std::size_t>(y * side + x)] != 0;
  }
  bool operator==(const Symbol&) const = default;
};

/// 21 or 25.
[[nodiscard]] int side_of(SymbolVersion version);
/// With the quiet zone: 29 or 33.
[[nodiscard]] int full_side_of(SymbolVersion version);
/// "V1-H", "V2-H".
[[nodiscard]] std::string_view version_name(SymbolVersion version);

/// The symbol of one of our codes, at level H.
[[nodiscard]] Symbol make_symbol(const Code& code, SymbolVersion version);

/// Any text. Errors: BadInput when it does not fit into `version` at `level`.
[[nodiscard]] Result<Symbol> encode_symbol(std::string_view text, SymbolVersion version,
                                           ErrorCorrection level);

}  // namespace rackside
