#pragma once
// Points in time as the log keeps them. Pure: nobody here asks a clock or a time-zone database.

#include <chrono>
#include <compare>
#include <optional>
#include <string>
#include <string_view>

#include "core/values/result.hpp"

namespace rackside {

/// UTC, to the millisecond.
using Instant = std::chrono::sys_time<std::chrono::milliseconds>;

/// A calendar day, without a time zone.
using Day = std::chrono::sys_days;

/// An instant together with what the clock on the wall differed from UTC by, so that "the evening
/// of the 3rd" can be told again years later and in another zone.
struct Moment {
  Instant utc{};
  std::chrono::minutes offset{0};

  /// The day on the wall calendar at that moment.
  [[nodiscard]] Day day() const { return std::chrono::floor<std::chrono::days>(local()); }
  /// What the clock on the wall showed, as if it were UTC.
  [[nodiscard]] Instant local() const { return utc + offset; }

  bool operator==(const Moment&) const = default;
};

/// How closely a moment is known. Records carried over from paper often have a day only.
enum class Precision { DayOnly, Exact };

struct When {
  Moment moment;
  Precision precision = Precision::Exact;

  bool operator==(const When&) const = default;
};

/// Days from `from` to `to` with their fraction; negative when `to` is earlier.
[[nodiscard]] double days_between(Instant from, Instant to);

/// "2031-04-09". Errors: BadInput for anything else, including days that no calendar has.
[[nodiscard]] Result<Day> parse_day(std::string_view text);
[[nodiscard]] std::string format_day(Day day);

/// ISO 8601 as the interchange files use it: a date ("2031-04-09"), or a date and time with an
/// offset ("2031-04-09T21:30+02:00", seconds and a fraction of up to three digits allowed, "Z" for
/// +00:00; a blank may stand for the "T"). A date alone becomes noon at `offset_of_days`, with
/// Precision::DayOnly. Errors: BadInput; a time without an offset is refused, because it is
/// unclear.
[[nodiscard]] Result<When> parse_when(std::string_view text, std::chrono::minutes offset_of_days);
/// The inverse of parse_when; milliseconds are written only when there are any.
[[nodiscard]] std::string format_when(const When& when);

/// Noon of `day` at `offset`: where a record sits of which only the day is known.
[[nodiscard]] When on_day(Day day, std::chrono::minutes offset);

}  // namespace rackside
