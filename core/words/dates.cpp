#include "core/words/dates.hpp"

#include <fmt/format.h>

#include <cmath>

#include "core/words/calendar_names.hpp"

namespace rackside {
namespace {

using namespace std::chrono;

/// How a style puts a date together: {w} weekday, {W} in short, {d} day, {m} month in short and {M}
/// in full, {n} its number, {y} year.
struct Patterns {
  const char* brief;
  const char* brief_with_year;
  const char* full;
  const char* short_weekday;
  const char* full_with_year;
};

constexpr Patterns day_month{"{d} {m}", "{d} {m} {y}", "{w} {d} {M}", "{W} {d} {M}",
                             "{w} {d} {M} {y}"};
constexpr Patterns month_day{"{m} {d}", "{m} {d}, {y}", "{w}, {M} {d}", "{W}, {M} {d}",
                             "{w}, {M} {d}, {y}"};
constexpr Patterns iso{"{y}-{n:02}-{d:0>2}", "{y}-{n:02}-{d:0>2}", "{w} {y}-{n:02}-{d:0>2}",
                       "{W} {y}-{n:02}-{d:0>2}", "{w} {y}-{n:02}-{d:0>2}"};
constexpr Patterns german{"{d}. {m}", "{d}. {m} {y}", "{w}, {d}. {M}", "{W}, {d}. {M}",
                          "{w}, {d}. {M} {y}"};
constexpr Patterns spanish{"{d} {m}", "{d} {m} {y}", "{w}, {d} de {M}", "{W}, {d} de {M}",
                           "{w}, {d} de {M} de {y}"};

const Patterns& patterns_of(DateStyle style) {
  switch (style) {
    case DateStyle::DayMonth:
    case DateStyle::French:
    case DateStyle::Italian:
    case DateStyle::Dutch: return day_month;
    case DateStyle::MonthDay: return month_day;
    case DateStyle::Iso: return iso;
    case DateStyle::German: return german;
    case DateStyle::Spanish: return spanish;
  }
  return day_month;
}

std::string put_together(const char* pattern, Day day, DateStyle style) {
  const year_month_day date{day};
  const unsigned number = static_cast<unsigned>(date.day());
  const unsigned month = static_cast<unsigned>(date.month());
  const CalendarNames& names = calendar_names(style);
  // The first of a month is an ordinal in French.
  const bool ordinal = style == DateStyle::French && number == 1;
  return fmt::format(
      fmt::runtime(pattern), fmt::arg("w", names.weekdays[weekday{day}.c_encoding()]),
      fmt::arg("W", names.brief_weekdays[weekday{day}.c_encoding()]),
      fmt::arg("d", fmt::format("{}{}", number, ordinal ? "er" : "")),
      fmt::arg("m", names.brief_months[month - 1]), fmt::arg("M", names.months[month - 1]),
      fmt::arg("n", month), fmt::arg("y", static_cast<int>(date.year())));
}

bool same_year(Day a, Day b) { return year_month_day{a}.year() == year_month_day{b}.year(); }

}  // namespace

std::string day_words(Day day, Day today, DateStyle style) {
  const Patterns& patterns = patterns_of(style);
  return put_together(same_year(day, today) ? patterns.brief : patterns.brief_with_year, day,
                      style);
}

std::string long_day_words(Day day, DateStyle style) {
  return put_together(patterns_of(style).full, day, style);
}

std::string weekday_words(Day day, DateStyle style) {
  return put_together(patterns_of(style).short_weekday, day, style);
}

std::string two_days_words(Day first, Day last, DateStyle style) {
  const year_month_day from{first}, to{last};
  // Only where the month comes last can the first one go without.
  const bool shared =
      &patterns_of(style) == &day_month && from.month() == to.month() && from.year() == to.year();
  return fmt::format("{} and {}",
                     shared ? put_together("{w} {d}", first, style) : long_day_words(first, style),
                     long_day_words(last, style));
}

std::string on_day_words(Day day, Day today, DateStyle style) {
  if (day <= today) return "today";
  if (day == today + days{1}) return "tomorrow";
  const Patterns& patterns = patterns_of(style);
  return "on " +
         put_together(same_year(day, today) ? patterns.full : patterns.full_with_year, day, style);
}

std::string when_words(const When& when, const Moment& now, DateStyle style) {
  const Day day = when.moment.day();
  if (day == now.day() - days{1}) return "yesterday";
  if (day != now.day()) return day_words(day, now.day(), style);
  if (when.precision == Precision::DayOnly) return "today";
  const hh_mm_ss time{floor<minutes>(when.moment.local() - Instant{day})};
  return fmt::format("today {:02}:{:02}", time.hours().count(), time.minutes().count());
}

std::string with_days(std::string text, std::span<const Day> days, Day today, DateStyle style) {
  for (std::size_t i = 0; i < days.size(); ++i) {
    const std::string place = fmt::format("{{{}}}", i);
    if (const auto at = text.find(place); at != std::string::npos)
      text.replace(at, place.size(), day_words(days[i], today, style));
  }
  return text;
}

std::string days_ago(int days) {
  if (days <= 0) return "today";
  if (days == 1) return "yesterday";
  return fmt::format("{} days ago", days);
}

std::string ago_words(Day day, Day today) {
  const auto count = static_cast<int>((today - day).count());
  if (count < 28) return days_ago(count);
  if (count < 120) return fmt::format("{} weeks ago", (count + 3) / 7);
  return fmt::format("{} months ago", std::lround(count / 30.44));
}

}  // namespace rackside
