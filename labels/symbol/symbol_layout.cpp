#include "labels/symbol/symbol_layout.hpp"

#include <cstdlib>

namespace rackside {
namespace {

constexpr int timing_line = 6;

void put(SymbolLayout& layout, int column, int row, Known known) {
  if (column < 0 || row < 0 || column >= layout.side || row >= layout.side) return;
  layout.known[layout.index({column, row})] = known;
}

// Squares within squares around a middle: finder patterns have their light separator with them.
void put_rings(SymbolLayout& layout, ModulePlace middle, int reach, const Known* rings) {
  for (int dy = -reach; dy <= reach; ++dy)
    for (int dx = -reach; dx <= reach; ++dx)
      put(layout, middle.column + dx, middle.row + dy, rings[std::max(std::abs(dx), std::abs(dy))]);
}

std::vector<bool> put_fixed_patterns(SymbolLayout& layout) {
  constexpr Known finder[] = {Known::Dark, Known::Dark, Known::Light, Known::Dark, Known::Light};
  const int last = layout.side - 4;
  for (int i = 8; i < layout.side - 8; ++i) {
    put(layout, i, timing_line, i % 2 ? Known::Light : Known::Dark);
    put(layout, timing_line, i, i % 2 ? Known::Light : Known::Dark);
  }
  for (const ModulePlace middle : {ModulePlace{3, 3}, ModulePlace{last, 3}, ModulePlace{3, last}})
    put_rings(layout, middle, 4, finder);
  if (layout.version >= 2) put_rings(layout, {layout.side - 7, layout.side - 7}, 2, finder + 1);
  put(layout, 8, layout.side - 8, Known::Dark);
  std::vector<bool> taken;
  for (const Known known : layout.known) taken.push_back(known != Known::Varies);
  return taken;
}

void place_format(SymbolLayout& layout) {
  const int side = layout.side;
  for (int i = 0; i < 15; ++i) {
    const int row = i < 8 ? 8 : i == 8 ? 7 : 14 - i;
    const int column = i < 6 ? i : i < 8 ? i + 1 : 8;
    const auto index = static_cast<std::size_t>(i);
    layout.format_places[0][index] = {column, row};
    layout.format_places[1][index] =
        i < 7 ? ModulePlace{8, side - 1 - i} : ModulePlace{side - 15 + i, 8};
  }
}

// Two columns at a time from the right, up and down by turns, past the vertical timing line.
void place_bits(SymbolLayout& layout, const std::vector<bool>& taken) {
  const auto bits = 8 * static_cast<std::size_t>(layout.data_codewords + layout.check_codewords);
  bool upwards = true;
  for (int right = layout.side - 1; right > 0; right -= 2, upwards = !upwards) {
    if (right == timing_line) --right;
    for (int step = 0; step < layout.side; ++step)
      for (int column = right; column > right - 2; --column) {
        const int row = upwards ? layout.side - 1 - step : step;
        const bool free = !taken[layout.index({column, row})];
        if (free && layout.bit_places.size() < bits) layout.bit_places.push_back({column, row});
      }
  }
}

SymbolLayout make_layout(int version, int data_codewords, int check_codewords) {
  SymbolLayout layout{version, 17 + 4 * version, data_codewords, check_codewords, {}, {}, {}};
  layout.known.assign(layout.modules(), Known::Varies);
  auto taken = put_fixed_patterns(layout);
  place_format(layout);
  for (const auto& copy : layout.format_places)
    for (const ModulePlace place : copy) taken[layout.index(place)] = true;
  place_bits(layout, taken);
  return layout;
}

}  // namespace

const SymbolLayout& symbol_layout(int version) {
  // Codewords of level H: ISO/IEC 18004:2015, Table 9.
  static const SymbolLayout layouts[] = {make_layout(1, 9, 17), make_layout(2, 16, 28)};
  return layouts[version - 1];
}

bool mask_flips(int mask, ModulePlace place) {
  const int i = place.row, j = place.column;
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

std::array<bool, 15> format_bits(int mask) {
  constexpr unsigned level_h = 0b10, generator = 0x537, exchange = 0x5412;
  const unsigned data = level_h << 3 | static_cast<unsigned>(mask);
  unsigned rest = data << 10;
  for (int bit = 14; bit >= 10; --bit)
    if (rest >> bit & 1) rest ^= generator << (bit - 10);
  const unsigned word = (data << 10 | rest) ^ exchange;
  std::array<bool, 15> bits{};
  for (std::size_t i = 0; i < 15; ++i) bits[i] = word >> (14 - i) & 1;
  return bits;
}

}  // namespace rackside
