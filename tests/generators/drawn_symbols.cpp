#include "tests/generators/drawn_symbols.hpp"

#include "labels/reader/check_codewords.hpp"
#include "labels/symbol/symbol_layout.hpp"

namespace rackside::tests {
namespace {

constexpr int quiet_zone = 4;
constexpr std::uint8_t paper = 225, ink = 30;

}  // namespace

Modules symbol_around(const std::vector<std::uint8_t>& data_codewords) {
  const SymbolLayout& layout = symbol_layout(1);
  Modules modules{layout.side, {}};
  for (const Known known : layout.known) modules.dark.push_back(known == Known::Dark);
  const auto set = [&](ModulePlace place, bool dark) {
    modules.dark[static_cast<std::size_t>(place.row * layout.side + place.column)] = dark;
  };
  const auto bits = format_bits(0);
  for (const auto& copy : layout.format_places)
    for (std::size_t i = 0; i < copy.size(); ++i) set(copy[i], bits[i]);
  const auto codewords = with_check_codewords(data_codewords, layout.check_codewords);
  for (std::size_t i = 0; i < layout.bit_places.size(); ++i) {
    const bool bit = codewords[i / 8] >> (7 - i % 8) & 1;
    set(layout.bit_places[i], bit != mask_flips(0, layout.bit_places[i]));
  }
  return modules;
}

Modules cut_bit_stream() {
  // 0010 (alphanumeric), 100101100 (300 characters), and then as many as there is room for.
  return symbol_around({0b00101001, 0b01100000, 0x11, 0x22, 0x33, 0x44, 0x55, 0x66, 0x77});
}

Sheet::Sheet(int width, int height)
    : image_{width, height,
             std::vector<std::uint8_t>(static_cast<std::size_t>(width * height), paper)} {}

void Sheet::put(const Modules& modules, int left, int top, int module_px) {
  for (int y = 0; y < modules.side * module_px; ++y)
    for (int x = 0; x < modules.side * module_px; ++x)
      if (modules.at(x / module_px, y / module_px))
        image_.pixels.at(static_cast<std::size_t>((top + y) * image_.width + left + x)) = ink;
}

GreyImage drawn(const Modules& modules, int module_px) {
  const int side = (modules.side + 2 * quiet_zone) * module_px;
  Sheet sheet(side, side);
  sheet.put(modules, quiet_zone * module_px, quiet_zone * module_px, module_px);
  return sheet.image();
}

}  // namespace rackside::tests
