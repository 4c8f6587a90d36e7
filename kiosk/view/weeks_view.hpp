#pragma once
// What the weeks ahead hold: who moults when, as a calendar strip. Days are counted from the
// Monday of this week.

#include <string>
#include <vector>

#include "kiosk/model/model.hpp"

namespace rackside::kiosk {

inline constexpr std::size_t weeks_shown = 8;

struct WeekColumn {
  std::string day;    // of its Monday: "23"
  std::string month;  // where it begins or changes: "Nov"
  double expected = 0;
  std::string expected_words;  // "3.4": the sum of the probabilities; "<0.1" for next to none
  bool operator==(const WeekColumn&) const = default;
};

struct WeeksView {
  std::vector<WeekColumn> weeks;
  double today = 0;               // days after that Monday
  std::string summary;            // "about 12 moults, likely 8 to 16": 8 of 10 times
  std::vector<AnimalId> animals;  // those that may have moulted unseen first, then by median
  std::size_t unseen = 0;         // how many of them the first are
  bool operator==(const WeeksView&) const = default;
};

/// A row of the strip.
struct WeekRow {
  std::optional<Code> tub;
  std::string place;  // "A2-14"
  std::string species;
  double q05 = 0, q25 = 0, median = 0, q75 = 0, q95 = 0;  // days after that Monday
  std::string unseen;                                     // "unseen: 6 of 10"; empty for most
  bool operator==(const WeekRow&) const = default;
};

[[nodiscard]] WeeksView view_weeks(const Model& model);
[[nodiscard]] WeekRow view_week_row(const Model& model, const AnimalId& animal);

}  // namespace rackside::kiosk
