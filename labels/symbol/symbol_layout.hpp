#pragma once
// Where everything stands in a version 1 or 2 symbol at error correction level H: what every such
// symbol has in common, and where its own bits are. ISO/IEC 18004:2015, 6.3, 7.7 to 7.9.

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace rackside {

struct ModulePlace {
  int column = 0;
  int row = 0;
};

/// Dark, light, or different from symbol to symbol.
enum class Known : std::int8_t { Light = -1, Varies = 0, Dark = 1 };

struct SymbolLayout {
  int version;
  int side;  // modules
  int data_codewords;
  int check_codewords;
  std::vector<Known> known;             // side * side, row by row
  std::vector<ModulePlace> bit_places;  // of the codewords' bits, most significant bit first
  /// The two copies of the 15 bits of format information, most significant bit first.
  std::array<std::array<ModulePlace, 15>, 2> format_places;

  /// Where a module stands in lists of all modules, row by row.
  [[nodiscard]] std::size_t index(ModulePlace place) const {
    return static_cast<std::size_t>(place.row) * static_cast<std::size_t>(side) +
           static_cast<std::size_t>(place.column);
  }
  [[nodiscard]] std::size_t modules() const { return index({0, side}); }
  [[nodiscard]] Known at(int column, int row) const { return known[index({column, row})]; }
};

inline constexpr int mask_count = 8;

/// The layouts of versions 1 and 2.
[[nodiscard]] const SymbolLayout& symbol_layout(int version);
/// Whether mask pattern `mask` exchanges dark and light at this place (Table 10).
[[nodiscard]] bool mask_flips(int mask, ModulePlace place);
/// The 15 bits of format information of level H with `mask` (7.9), most significant first.
[[nodiscard]] std::array<bool, 15> format_bits(int mask);

}  // namespace rackside
