#include "labels/label/symbol_size.hpp"

#include <cmath>

namespace rackside {
namespace {

constexpr double rounding = 1e-6;

}  // namespace

std::optional<SymbolSize> largest_symbol(SymbolVersion version, double room,
                                         Resolution resolution) {
  const double dot = resolution.dot();
  const int dots = static_cast<int>(std::floor(room / full_side_of(version) / dot + rounding));
  const double module = dots * dot;
  if (module < least_module) return std::nullopt;
  return SymbolSize{version, dots, module};
}

std::optional<SymbolSize> best_symbol(double room, Resolution resolution) {
  const auto version = room >= least_side_for_v2 - rounding ? SymbolVersion::V2 : SymbolVersion::V1;
  return largest_symbol(version, room, resolution);
}

}  // namespace rackside
