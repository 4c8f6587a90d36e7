#pragma once
// Days of an absence, and how they are said on paper: with their weekday, because that is what a
// stand-in goes by.

#include <string>
#include <vector>

#include "core/values/time.hpp"

namespace rackside {

/// "Tuesday 3 June".
[[nodiscard]] std::string day_name(Day day);
/// "Tue 3 June".
[[nodiscard]] std::string short_day_name(Day day);
/// "Tuesday 3 and Sunday 8 June", "Monday 30 June and Friday 4 July".
[[nodiscard]] std::string day_range(Day first, Day last);

/// `now` and the same hour on every day after it until `last`; at least `now`.
[[nodiscard]] std::vector<Moment> days_until(const Moment& now, Day last);

}  // namespace rackside
