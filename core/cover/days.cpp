#include "core/cover/days.hpp"

#include <fmt/format.h>

#include <array>

namespace rackside {
namespace {

using namespace std::chrono;

constexpr std::array months{"January", "February", "March",     "April",   "May",      "June",
                            "July",    "August",   "September", "October", "November", "December"};
constexpr std::array weekdays{"Sunday",   "Monday", "Tuesday", "Wednesday",
                              "Thursday", "Friday", "Saturday"};

const char* month_of(Day day) {
  return months[static_cast<unsigned>(year_month_day{day}.month()) - 1];
}

std::string weekday_and_number(Day day) {
  return fmt::format("{} {}", weekdays[weekday{day}.c_encoding()],
                     static_cast<unsigned>(year_month_day{day}.day()));
}

}  // namespace

std::string day_name(Day day) {
  return fmt::format("{} {}", weekday_and_number(day), month_of(day));
}

std::string short_day_name(Day day) {
  return fmt::format("{:.3} {} {}", weekdays[weekday{day}.c_encoding()],
                     static_cast<unsigned>(year_month_day{day}.day()), month_of(day));
}

std::string day_range(Day first, Day last) {
  const bool same_month = year_month_day{first}.month() == year_month_day{last}.month();
  return fmt::format("{} and {}", same_month ? weekday_and_number(first) : day_name(first),
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
