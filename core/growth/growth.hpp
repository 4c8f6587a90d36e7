#pragma once
// How an animal grew, moult by moult.

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/event/event.hpp"

namespace rackside {

/// Between two moults nothing but the abdomen grows, so one measure holds for the whole time
/// between.
struct GrowthStep {
  std::optional<When> moult;  // that began it; none for the time before the first moult on record
  std::optional<int> instar;
  std::optional<Millimetres> leg_span;  // the last one measured in that time
  std::optional<Millimetres> carapace;

  bool operator==(const GrowthStep&) const = default;
};

/// The steps of one animal, the earliest first. Events in any order, retractions among them; of
/// more than one animal the steps are meaningless.
[[nodiscard]] std::vector<GrowthStep> growth_of(std::vector<Event> events);

/// Growth in one measure from one step to a later one.
struct GrowthBetween {
  std::size_t from = 0;  // index of the steps
  std::size_t to = 0;
  double ratio = 1;       // a moult: over more than one, the geometric mean
  bool plausible = true;  // else one of the two measures, or its unit, is probably wrong

  bool operator==(const GrowthBetween&) const = default;
};

/// From each measured step to the next measured one, passing over a measure that fits neither what
/// was before it nor what came after.
[[nodiscard]] std::vector<GrowthBetween> growth_in(Measure what, std::span<const GrowthStep> steps);

/// Length at each moult grows by the cube root of two where the volume doubles (Przibram & Megusar
/// 1912, from memory).
inline constexpr double przibram_ratio = 1.2599210498948732;
/// Mean ratio in length of the spiders in Faber 1994, J. Zool.
inline constexpr double faber_ratio = 1.29;

struct GrowthSummary {
  int moults = 0;    // between the first and the last plausible measure
  double ratio = 1;  // geometric mean a moult
  Millimetres last;
  Millimetres next;  // after one more moult, if it goes on like this
  std::string
      sentence;  // "Leg span grew by 28 % a moult over 3 moults; 26 to 29 % is usual in spiders."

  bool operator==(const GrowthSummary&) const = default;
};

/// None before there are two plausible measures with a moult between them.
[[nodiscard]] std::optional<GrowthSummary> summarise_growth(Measure what,
                                                            std::span<const GrowthStep> steps);

}  // namespace rackside
