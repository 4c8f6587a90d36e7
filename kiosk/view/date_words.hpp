#pragma once
// Dates as one says them at the rack.

#include <string>

#include "core/values/time.hpp"

namespace rackside::kiosk {

/// "today 21:30", "yesterday", "3 Nov", "3 Nov 2029".
[[nodiscard]] std::string when_words(const When& when, const Moment& now);
/// "3 Nov", with the year where it is not this one.
[[nodiscard]] std::string day_words(Day day, Day today);
/// "Tuesday 3 November".
[[nodiscard]] std::string long_day_words(Day day);
/// "today", "yesterday", "6 days ago", "5 weeks ago", "8 months ago".
[[nodiscard]] std::string ago_words(Day day, Day today);

}  // namespace rackside::kiosk
