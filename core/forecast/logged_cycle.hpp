#pragma once
// What is on record of an animal's cycles, as the level filter takes it in.

#include <cstdint>
#include <optional>
#include <vector>

#include "core/event/details.hpp"

namespace rackside {

/// The days between meals that followed each other in one cycle.
struct MealGaps {
  double days = 0, gaps = 0;
};

/// One stretch between two moults on record, or less where an end is missing. Bounds are of the
/// logarithm of its length from the middle of the first moult's span; `noise` is the variance that
/// span adds, or a part of it where it is wide.
struct LoggedCycle {
  enum class Start : std::uint8_t { Moult, Arrival };

  double low = 0, high = 0, noise = 0;
  Start start = Start::Moult;
  bool running = false;    // no moult has ended it yet; only `low` is known
  double start_width = 0;  // days of the first moult's span, where that is wide; else 0
  bool wide_end = false;   // the span of the moult that ends it is wide
  MealGaps meals;
  double trace = 0;  // of a hidden moult, as core/forecast/traces.hpp has it
};

/// A span that is wide for the cycles beside it is cut into this many parts, each of which may hold
/// the moult: a moult late in its span makes one cycle longer and the next one shorter.
inline constexpr std::size_t span_parts = 4;

struct CycleHistory {
  Stage stage = Stage::Unknown;
  std::optional<int> instar;
  std::vector<LoggedCycle> cycles;
  MealGaps meals_since;  // in the cycle after them
};

}  // namespace rackside
