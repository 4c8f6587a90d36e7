#include "labels/reader/code_space.hpp"

#include "labels/reader/check_codewords.hpp"
#include "labels/symbol/symbol_layout.hpp"
#include "tests/frame.hpp"
#include "tests/generators/symbols.hpp"

using namespace rackside;

namespace {

std::string seven_characters(const Code& code) { return std::string(code.text()); }

// The mask a symbol was made with, from its format information; -1 when that is none of level H.
int mask_of(const tests::Modules& modules, const SymbolLayout& layout, std::size_t copy) {
  for (int mask = 0; mask < mask_count; ++mask) {
    const auto bits = format_bits(mask);
    bool same = true;
    for (std::size_t i = 0; i < bits.size(); ++i) {
      const ModulePlace place = layout.format_places[copy][i];
      same = same && modules.at(place.column, place.row) == bits[i];
    }
    if (same) return mask;
  }
  return -1;
}

}  // namespace

TEST_CASE("the check codewords of the worked symbol are those of the standard") {
  // ISO/IEC 18004, worked symbol: "01234567", version 1-M.
  const std::vector<std::uint8_t> data{0x10, 0x20, 0x0C, 0x56, 0x61, 0x80, 0xEC, 0x11,
                                       0xEC, 0x11, 0xEC, 0x11, 0xEC, 0x11, 0xEC, 0x11};
  const std::vector<std::uint8_t> check{0xA5, 0x24, 0xD4, 0xC1, 0xED, 0x36, 0xC7, 0x87, 0x2C, 0x55};
  auto all = data;
  std::ranges::copy(check, std::back_inserter(all));
  CHECK(with_check_codewords(data, 10) == all);
}

TEST_CASE("every module of a symbol by libqrencode is where the layout says") {
  tests::Random random(7);
  for (const int version : {1, 2})
    for (int i = 0; i < 40; ++i) {
      const auto modules = tests::symbol_of(seven_characters(tests::random_code(random)), version);
      const SymbolLayout& layout = symbol_layout(version);
      REQUIRE(modules.side == layout.side);
      for (int row = 0; row < layout.side; ++row)
        for (int column = 0; column < layout.side; ++column)
          if (layout.at(column, row) != Known::Varies)
            REQUIRE(modules.at(column, row) == (layout.at(column, row) == Known::Dark));
      const int mask = mask_of(modules, layout, 0);
      CHECK(mask >= 0);
      CHECK(mask == mask_of(modules, layout, 1));
    }
}

TEST_CASE("the bits of a symbol by libqrencode are a word of the code space, and spell its code") {
  tests::Random random(8);
  for (const int version : {1, 2})
    for (int i = 0; i < 40; ++i) {
      const Code code = tests::random_code(random);
      const auto modules = tests::symbol_of(seven_characters(code), version);
      const SymbolLayout& layout = symbol_layout(version);
      const CodeSpace& space = code_space(version);
      const int mask = mask_of(modules, layout, 0);
      CodewordBits bits;
      for (std::size_t k = 0; k < layout.bit_places.size(); ++k) {
        const ModulePlace place = layout.bit_places[k];
        bits[k] = modules.at(place.column, place.row) != mask_flips(mask, place);
      }
      FreeBits free = 0;  // bits 13 to 56 of the message
      for (std::size_t k = 13; k < 57; ++k) free = free << 1 | (bits[k] ? 1 : 0);
      CodewordBits word = space.fixed;
      for (std::size_t k = 0; k < free_bits; ++k)
        if (free >> k & 1) word ^= space.rows[k];
      CHECK(word == bits);
      CHECK(code_of(free) == code);
    }
}

TEST_CASE("there are no more codes than the bound on chance readings counts with") {
  // By sampling bodies: how many have a check character inside the alphabet.
  double codes = 0;
  tests::Random random(9);
  constexpr int tries = 200'000;
  int possible = 0;
  for (int i = 0; i < tries; ++i) {
    std::string body;
    for (std::size_t k = 0; k < code_body_length; ++k)
      body += code_alphabet[random() % code_alphabet.size()];
    possible += make_code(CodeKind::Enclosure, body).has_value();
  }
  codes = 4 * std::pow(28.0, 6) * possible / tries;
  CHECK(std::log2(codes) < code_count_log2);
  CHECK(std::log2(codes) > code_count_log2 - 0.2);
}
