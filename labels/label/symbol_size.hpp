#pragma once
// How large a symbol a label carries.

#include <optional>

#include "labels/symbol/symbol.hpp"

namespace rackside {

/// Dots an inch of a printer.
struct Resolution {
  int dots_per_inch = 300;
  [[nodiscard]] double dot() const { return 25.4 / dots_per_inch; }  // millimetres
  bool operator==(const Resolution&) const = default;
};

struct SymbolSize {
  SymbolVersion version = SymbolVersion::V1;
  int dots = 0;       // printer dots a module, always whole
  double module = 0;  // millimetres

  /// Millimetres with the quiet zone.
  [[nodiscard]] double side() const { return module * full_side_of(version); }
  bool operator==(const SymbolSize&) const = default;
};

/// Version 2 needs this many millimetres to be the better one (it reads better on tilt, curves and
/// under glare; version 1 below it, for its larger modules).
inline constexpr double least_side_for_v2 = 13.0;
/// Below this a module gives a camera too few pixels, also from close up.
inline constexpr double least_module = 0.249;

/// The largest symbol of `version` with a side of at most `room` millimetres. None when even its
/// least module does not fit.
[[nodiscard]] std::optional<SymbolSize> largest_symbol(SymbolVersion version, double room,
                                                       Resolution resolution);

/// The same with the version chosen by the room.
[[nodiscard]] std::optional<SymbolSize> best_symbol(double room, Resolution resolution);

}  // namespace rackside
