#include "core/interchange/dates.hpp"

#include <fmt/format.h>

namespace rackside::interchange {
namespace {

using namespace std::chrono;

constexpr Day earliest{year{1900} / 1 / 1};

std::chrono::minutes offset_on(Day day, const Today& today) {
  return today.clock.offset_at(Instant{day} + hours{12});
}

void check_sensible(const Row& row, std::size_t column, Day day, bool too_late) {
  const std::string text = trimmed(row.text(column));
  if (day < earliest)
    row.refuse(column, fmt::format("\"{}\" is before 1900; is the year right?", text));
  if (too_late)
    row.refuse(column, fmt::format("\"{}\" has not come yet; is the date right?", text));
}

}  // namespace

std::optional<Day> read_day(const Row& row, std::size_t column, const Today& today) {
  const std::string text = trimmed(row.text(column));
  if (text.empty()) return std::nullopt;
  const auto day = parse_day(text);
  if (!day) row.refuse(column, fmt::format("\"{}\" is not a date like 2031-04-09.", text));
  check_sensible(row, column, *day, *day > today.now.day() + days{1});
  return *day;
}

When read_when(const Row& row, std::size_t column, const Today& today) {
  const std::string text = trimmed(row.text(column));
  if (text.empty()) row.refuse(column, "The date is missing.");
  const auto day = parse_day(text);
  const auto when = day ? on_day(*day, offset_on(*day, today)) : parse_when(text, minutes{0});
  if (!when) row.refuse(column, when.error().sentence + ".");
  const bool too_late =
      day ? *day > today.now.day() + days{1} : when->moment.utc > today.now.utc + days{1};
  check_sensible(row, column, when->moment.day(), too_late);
  return *when;
}

When beginning_of(Day day, const Today& today) {
  const minutes offset = offset_on(day, today);
  return {{Instant{day} - offset, offset}, Precision::DayOnly};
}

}  // namespace rackside::interchange
