#pragma once
// Days and moments as one says them at the rack.

#include <span>
#include <string>

#include "core/values/time.hpp"
#include "core/words/date_style.hpp"

namespace rackside {

/// "3 Nov", with the year where it is not this one.
[[nodiscard]] std::string day_words(Day day, Day today, DateStyle style = DateStyle::DayMonth);
/// "Tuesday 3 November".
[[nodiscard]] std::string long_day_words(Day day, DateStyle style = DateStyle::DayMonth);
/// "Tue 3 November": where a line has little room and the weekday is what one goes by.
[[nodiscard]] std::string weekday_words(Day day, DateStyle style = DateStyle::DayMonth);
/// "Tuesday 3 and Sunday 8 November", "Monday 30 June and Friday 4 July".
[[nodiscard]] std::string two_days_words(Day first, Day last,
                                         DateStyle style = DateStyle::DayMonth);
/// "today", "tomorrow", "on Friday 12 June", with the year where it is not this one.
[[nodiscard]] std::string on_day_words(Day day, Day today, DateStyle style = DateStyle::DayMonth);
/// "today 21:30", "yesterday", "3 Nov", "3 Nov 2029".
[[nodiscard]] std::string when_words(const When& when, const Moment& now,
                                     DateStyle style = DateStyle::DayMonth);

/// A text in which {0}, {1} stand for days, with them as day_words tells them.
[[nodiscard]] std::string with_days(std::string text, std::span<const Day> days, Day today,
                                    DateStyle style);

/// "today", "yesterday", "40 days ago".
[[nodiscard]] std::string days_ago(int days);
/// The same in rounder words: "6 days ago", "5 weeks ago", "8 months ago".
[[nodiscard]] std::string ago_words(Day day, Day today);

}  // namespace rackside
