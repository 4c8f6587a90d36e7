#include "labels/symbol/codewords.hpp"

namespace rackside {
namespace {

const SymbolLayout& layout_of(SymbolVersion version) {
  return symbol_layout(version == SymbolVersion::V1 ? 1 : 2);
}

const SymbolLayout& layout_of(const Symbol& symbol) {
  return symbol_layout(symbol.side == symbol_layout(1).side ? 1 : 2);
}

bool is_dark(const Symbol& symbol, ModulePlace place) {
  return symbol.is_dark(place.column, place.row);
}

}  // namespace

std::vector<CodewordPlaces> codeword_places(SymbolVersion version) {
  const auto& modules = layout_of(version).bit_places;
  std::vector<CodewordPlaces> places(modules.size() / 8);
  for (std::size_t i = 0; i < modules.size(); ++i) places[i / 8][i % 8] = modules[i];
  return places;
}

std::vector<std::uint8_t> codewords_of(const Symbol& symbol) {
  const int mask = static_cast<int>((format_information(symbol) ^ 0x5412u) >> 10 & 7u);
  const auto& modules = layout_of(symbol).bit_places;
  std::vector<std::uint8_t> values(modules.size() / 8);
  for (std::size_t i = 0; i < modules.size(); ++i) {
    const bool bit = is_dark(symbol, modules[i]) != mask_flips(mask, modules[i]);
    values[i / 8] = static_cast<std::uint8_t>(values[i / 8] << 1 | (bit ? 1 : 0));
  }
  return values;
}

unsigned format_information(const Symbol& symbol) {
  unsigned bits = 0;
  for (const ModulePlace place : layout_of(symbol).format_places[0])
    bits = bits << 1 | static_cast<unsigned>(is_dark(symbol, place));
  return bits;
}

int correctable_codewords(SymbolVersion version) { return version == SymbolVersion::V1 ? 8 : 14; }

}  // namespace rackside
