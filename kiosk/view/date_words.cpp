#include "kiosk/view/date_words.hpp"

#include <fmt/format.h>

#include <array>

namespace rackside::kiosk {
namespace {

using namespace std::chrono;

constexpr std::array<const char*, 12> months{"January",   "February", "March",    "April",
                                             "May",       "June",     "July",     "August",
                                             "September", "October",  "November", "December"};
constexpr std::array<const char*, 7> weekdays{"Sunday",   "Monday", "Tuesday", "Wednesday",
                                              "Thursday", "Friday", "Saturday"};

const char* month_of(year_month_day date) {
  return months[static_cast<unsigned>(date.month()) - 1];
}

}  // namespace

std::string when_words(const When& when, const Moment& now) {
  const Day day = when.moment.day();
  if (day != now.day()) return day == now.day() - days{1} ? "yesterday" : day_words(day, now.day());
  if (when.precision == Precision::DayOnly) return "today";
  const hh_mm_ss time{floor<minutes>(when.moment.local() - Instant{day})};
  return fmt::format("today {:02}:{:02}", time.hours().count(), time.minutes().count());
}

std::string day_words(Day day, Day today) {
  const year_month_day date{day};
  const std::string text =
      fmt::format("{} {:.3}", static_cast<unsigned>(date.day()), month_of(date));
  if (date.year() == year_month_day{today}.year()) return text;
  return fmt::format("{} {}", text, static_cast<int>(date.year()));
}

std::string long_day_words(Day day) {
  const year_month_day date{day};
  return fmt::format("{} {} {}", weekdays[weekday{day}.c_encoding()],
                     static_cast<unsigned>(date.day()), month_of(date));
}

std::string ago_words(Day day, Day today) {
  const auto count = (today - day).count();
  if (count <= 0) return "today";
  if (count == 1) return "yesterday";
  if (count < 28) return fmt::format("{} days ago", count);
  if (count < 120) return fmt::format("{} weeks ago", (count + 3) / 7);
  return fmt::format("{} months ago", static_cast<int>(count / 30.44 + 0.5));
}

}  // namespace rackside::kiosk
