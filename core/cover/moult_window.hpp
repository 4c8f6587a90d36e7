#pragma once
// When an animal may be found moulting while the keeper is away, said so that nobody is alarmed.

#include <optional>
#include <string>

#include "core/forecast/forecast.hpp"
#include "core/values/time.hpp"
#include "core/words/date_style.hpp"

namespace rackside {

/// Where four of five such moults fall, cut to the absence.
struct MoultWindow {
  double probability = 0;  // that it moults on these days
  Day first;
  Day last;
  bool from_the_start = false;  // it may also moult before them
  bool to_the_end = false;      // or after them

  bool operator==(const MoultWindow&) const = default;
};

/// The share of moults before so many days from now, by the quantiles of `forecast`.
[[nodiscard]] double moult_before(const Forecast& forecast, double days);

/// None where no moult is expected or one on the days from `from` to `to` is not more likely than
/// `tell_above`. `forecast` was made on `today`.
[[nodiscard]] std::optional<MoultWindow> moult_window(const Forecast& forecast, Day today, Day from,
                                                      Day to, double tell_above);

/// "May be found on its back between Tuesday 3 and Sunday 8 June: leave it, nothing is wrong (4 of
/// 10 likely)."
[[nodiscard]] std::string window_sentence(const MoultWindow& window,
                                          DateStyle dates = DateStyle::DayMonth);

}  // namespace rackside
