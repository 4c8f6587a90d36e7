#pragma once
// All symbols that carry one of our codes, as one small linear code.
//
// Mode, character count, terminator and padding of such a symbol are the same in every one; only
// 44 bits differ (four pairs of characters, 11 bits a pair), and everything else, the Reed-Solomon
// check codewords included, is a sum modulo 2 of a fixed word and 44 rows. 44 bits in 208 (version
// 1) or 352 (version 2) is far more protection than Reed-Solomon alone: ISO/IEC 18004 lets level H
// mend 8 codewords of 26, this lets a decoder mend about a fifth of all bits, wherever they are.

#include <array>
#include <bitset>
#include <cstdint>
#include <optional>
#include <vector>

#include "core/code/code.hpp"

namespace rackside {

inline constexpr std::size_t most_bits = 352;
inline constexpr int free_bits = 44;

/// The bits of all codewords in the order of SymbolLayout::bit_places, before masking; 1 is dark.
using CodewordBits = std::bitset<most_bits>;
/// The bits that differ from code to code; the first is bit 43.
using FreeBits = std::uint64_t;

struct CodeSpace {
  std::size_t length;                        // bits
  CodewordBits fixed;                        // the word of FreeBits 0
  std::array<CodewordBits, free_bits> rows;  // what setting bit i of FreeBits changes
};

[[nodiscard]] const CodeSpace& code_space(int version);

/// The code these bits spell; none for most: characters outside the alphabet, an unknown kind, a
/// check character that does not fit. One pattern in 11,500 is a code.
[[nodiscard]] std::optional<Code> code_of(FreeBits bits);

/// How many codes there can be, as a power of two: 4 kinds, 28^6 bodies, and 28 of 36 check
/// characters inside the alphabet (sampled in the tests: fewer than this).
inline constexpr double code_count_log2 = 30.6;

}  // namespace rackside
