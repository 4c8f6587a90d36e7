#include "core/cover/days.hpp"

#include <fmt/format.h>

#include "core/words/calendar_names.hpp"
#include "core/words/dates.hpp"

namespace rackside {
namespace {

using namespace std::chrono;

std::string_view weekday_of(Day day) {
  return calendar_names(DateStyle::DayMonth).weekdays[weekday{day}.c_encoding()];
}

unsigned number_of(Day day) { return static_cast<unsigned>(year_month_day{day}.day()); }

std::string_view month_of(Day day) {
  const auto month = static_cast<unsigned>(year_month_day{day}.month());
  return calendar_names(DateStyle::DayMonth).months[month - 1];
}

}  // namespace

std::string day_name(Day day) { return long_day_words(day); }

std::string short_day_name(Day day) {
  return fmt::format("{:.3} {} {}", weekday_of(day), number_of(day), month_of(day));
}

std::string day_range(Day first, Day last) {
  const bool same_month = year_month_day{first}.month() == year_month_day{last}.month();
  return fmt::format(
      "{} and {}",
      same_month ? fmt::format("{} {}", weekday_of(first), number_of(first)) : day_name(first),
      day_name(last));
}

std::vector<Moment> days_until(const Moment& now, Day last) {
  std::vector<Moment> moments{now};
  for (Moment next = now; next.day() < last;) {
    next.utc += days{1};
    moments.push_back(next);
  }
  return moments;
}

}  // namespace rackside
