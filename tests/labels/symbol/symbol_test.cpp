#include "labels/symbol/symbol.hpp"

#include "labels/symbol/codewords.hpp"
#include "labels/symbol/outline.hpp"
#include "tests/frame.hpp"

using namespace rackside;

TEST_CASE("the worked symbol of ISO/IEC 18004 comes out codeword for codeword") {
  // ISO/IEC 18004, annex "Symbol encoding example": '01234567' in version 1-M.
  const std::vector<std::uint8_t> published{0x10, 0x20, 0x0C, 0x56, 0x61, 0x80, 0xEC, 0x11, 0xEC,
                                            0x11, 0xEC, 0x11, 0xEC, 0x11, 0xEC, 0x11, 0xA5, 0x24,
                                            0xD4, 0xC1, 0xED, 0x36, 0xC7, 0x87, 0x2C, 0x55};
  const auto symbol = encode_symbol("01234567", SymbolVersion::V1, ErrorCorrection::M);
  REQUIRE(symbol);
  CHECK(codewords_of(*symbol) == published);
}

namespace {

// BCH(15,5) with generator 0x537 and mask 0x5412, ISO/IEC 18004 annex C.
unsigned protected_format(unsigned data) {
  unsigned rest = data << 10;
  for (int bit = 14; bit >= 10; --bit)
    if (rest >> bit & 1u) rest ^= 0x537u << (bit - 10);
  return (data << 10 | rest) ^ 0x5412u;
}

}  // namespace

TEST_CASE("the format information is the one the standard works out") {
  CHECK(protected_format(0b00101) == 0x40CE);  // ISO/IEC 18004 annex C: level M, mask 101
  const auto code = make_code(CodeKind::Enclosure, "4K7M2X");
  REQUIRE(code);
  for (const auto version : {SymbolVersion::V1, SymbolVersion::V2}) {
    const unsigned format = format_information(make_symbol(*code, version));
    const unsigned data = (format ^ 0x5412u) >> 10;
    CHECK(data >> 3 == 0b10);  // level H
    CHECK(format == protected_format(data));
  }
}

TEST_CASE("a symbol has the codewords of its version and every one has its own modules") {
  CHECK(codeword_places(SymbolVersion::V1).size() == 26);  // ISO/IEC 18004, table 1
  CHECK(codeword_places(SymbolVersion::V2).size() == 44);
  for (const auto version : {SymbolVersion::V1, SymbolVersion::V2}) {
    const int side = side_of(version);
    std::vector<int> uses(static_cast<std::size_t>(side * side));
    for (const auto& codeword : codeword_places(version))
      for (const auto& place : codeword)
        ++uses[static_cast<std::size_t>(place.row * side + place.column)];
    CHECK(std::ranges::count(uses, 1) == static_cast<long>(codeword_places(version).size() * 8));
    CHECK(std::ranges::count(uses, 0) + std::ranges::count(uses, 1) == side * side);
  }
}

TEST_CASE("our codes use the alphanumeric mode and hold their own text") {
  const auto code = make_code(CodeKind::Enclosure, "4K7M2X");
  REQUIRE(code);
  const auto words = codewords_of(make_symbol(*code, SymbolVersion::V1));
  // Mode 0010, then the count 8 in nine bits: 0010 0000 0100 0...
  CHECK(words[0] == 0x20);
  CHECK((words[1] & 0xF8) == 0x40);
}

TEST_CASE("what does not fit is refused") {
  CHECK(encode_symbol("T4K7M2XA12", SymbolVersion::V1, ErrorCorrection::H).has_value());
  const auto long_text = encode_symbol("T4K7M2XA123", SymbolVersion::V1, ErrorCorrection::H);
  REQUIRE_FALSE(long_text);
  CHECK(long_text.error().kind == ErrorKind::BadInput);
  CHECK_FALSE(encode_symbol("", SymbolVersion::V1, ErrorCorrection::H));
}

namespace {

// How often the closed paths wind around the middle of a module, counted by the edges to its left.
int winding_at(const std::vector<std::vector<SymbolPoint>>& paths, int x, int y) {
  int winding = 0;
  for (const auto& path : paths)
    for (std::size_t i = 0; i < path.size(); ++i) {
      const SymbolPoint a = path[i];
      const SymbolPoint b = path[(i + 1) % path.size()];
      if (a.x != b.x || a.x > x) continue;
      if (std::min(a.y, b.y) <= y && std::max(a.y, b.y) > y) winding += a.y < b.y ? 1 : -1;
    }
  return winding;
}

}  // namespace

TEST_CASE("the outlines of a symbol enclose its dark modules and nothing else") {
  rc::prop("any pattern of modules", [] {
    Symbol symbol{.side = *rc::gen::inRange(1, 9), .dark = {}};
    for (int i = 0; i < symbol.side * symbol.side; ++i)
      symbol.dark.push_back(static_cast<std::uint8_t>(*rc::gen::inRange(0, 2)));
    const auto paths = outlines_of(symbol);
    for (int y = 0; y < symbol.side; ++y)
      for (int x = 0; x < symbol.side; ++x)
        RC_ASSERT((winding_at(paths, x, y) != 0) == symbol.is_dark(x, y));
  });
}
