#pragma once
// What the codewords of a symbol hold, and which modules one damaged spot takes from which of them.

#include <array>
#include <cstdint>
#include <vector>

#include "labels/symbol/symbol.hpp"
#include "labels/symbol/symbol_layout.hpp"

namespace rackside {

/// The eight modules of one codeword, most significant bit first.
using CodewordPlaces = std::array<ModulePlace, 8>;

/// All codewords of a symbol in the order in which they stand there: 26 in version 1, 44 in
/// version 2 (ISO/IEC 18004, 7.7.3). Left-over modules are not among them.
[[nodiscard]] std::vector<CodewordPlaces> codeword_places(SymbolVersion version);

/// What the codewords of `symbol` hold once its mask is taken off.
[[nodiscard]] std::vector<std::uint8_t> codewords_of(const Symbol& symbol);

/// The 15 bits of the format information, as they stand beside the upper left finder pattern.
[[nodiscard]] unsigned format_information(const Symbol& symbol);

/// How many codewords of a symbol at level H can be wrong and still be put right: 8 of 26 and 14 of
/// 44 (ISO/IEC 18004, table 9). Version 1-H gives one up to guard against misreading.
[[nodiscard]] int correctable_codewords(SymbolVersion version);

}  // namespace rackside
