#include "labels/symbol/codewords.hpp"

namespace rackside {
namespace {

bool inside(int value, int from, int to) { return value >= from && value < to; }

// Finder patterns with their separators and format information, timing patterns, and the one
// alignment pattern of version 2 around module 18, 18.
bool is_function_module(int x, int y, int side) {
  if (x == 6 || y == 6) return true;
  if (x < 9 && y < 9) return true;
  if (x >= side - 8 && y < 9) return true;
  if (x < 9 && y >= side - 8) return true;
  return side == 25 && inside(x, 16, 21) && inside(y, 16, 21);
}

// ISO/IEC 18004, table 10, with i the row and j the column.
bool mask_inverts(unsigned mask, int j, int i) {
  switch (mask) {
    case 0: return (i + j) % 2 == 0;
    case 1: return i % 2 == 0;
    case 2: return j % 3 == 0;
    case 3: return (i + j) % 3 == 0;
    case 4: return (i / 2 + j / 3) % 2 == 0;
    case 5: return i * j % 2 + i * j % 3 == 0;
    case 6: return (i * j % 2 + i * j % 3) % 2 == 0;
    default: return ((i + j) % 2 + i * j % 3) % 2 == 0;
  }
}

// Pairs of columns from the right, up and down in turn, passing over the timing column.
std::vector<SymbolPoint> modules_in_order(int side) {
  std::vector<SymbolPoint> places;
  bool upward = true;
  for (int right = side - 1; right > 0; right -= 2) {
    if (right == 6) --right;
    for (int step = 0; step < side; ++step) {
      const int y = upward ? side - 1 - step : step;
      for (const int x : {right, right - 1})
        if (!is_function_module(x, y, side)) places.push_back({x, y});
    }
    upward = !upward;
  }
  return places;
}

}  // namespace

std::vector<CodewordPlaces> codeword_places(SymbolVersion version) {
  const auto modules = modules_in_order(side_of(version));
  std::vector<CodewordPlaces> places(modules.size() / 8);
  for (std::size_t i = 0; i < places.size() * 8; ++i) places[i / 8][i % 8] = modules[i];
  return places;
}

std::vector<std::uint8_t> codewords_of(const Symbol& symbol) {
  const unsigned mask = (format_information(symbol) ^ 0x5412u) >> 10 & 7u;
  std::vector<std::uint8_t> values;
  for (const CodewordPlaces& codeword :
       codeword_places(symbol.side == 21 ? SymbolVersion::V1 : SymbolVersion::V2)) {
    unsigned value = 0;
    for (const SymbolPoint& place : codeword)
      value = value << 1 | static_cast<unsigned>(symbol.is_dark(place.x, place.y) !=
                                                 mask_inverts(mask, place.x, place.y));
    values.push_back(static_cast<std::uint8_t>(value));
  }
  return values;
}

unsigned format_information(const Symbol& symbol) {
  // Bits 14 to 0: along row 8 from the left, then up column 8, passing over the timing patterns.
  constexpr std::array<SymbolPoint, 15> places{{{0, 8},
                                                {1, 8},
                                                {2, 8},
                                                {3, 8},
                                                {4, 8},
                                                {5, 8},
                                                {7, 8},
                                                {8, 8},
                                                {8, 7},
                                                {8, 5},
                                                {8, 4},
                                                {8, 3},
                                                {8, 2},
                                                {8, 1},
                                                {8, 0}}};
  unsigned bits = 0;
  for (const SymbolPoint& place : places)
    bits = bits << 1 | static_cast<unsigned>(symbol.is_dark(place.x, place.y));
  return bits;
}

int correctable_codewords(SymbolVersion version) { return version == SymbolVersion::V1 ? 8 : 14; }

}  // namespace rackside
