#include "core/values/time.hpp"

#include <fmt/format.h>

#include <charconv>

namespace rackside {
namespace {

using namespace std::chrono;

// Reads fixed-width numbers and marks from the front of a text.
class Reader {
 public:
  explicit Reader(std::string_view text) : rest_(text) {}

  bool digits(std::size_t width, int& value) {
    if (rest_.size() < width) return false;
    const char* end = rest_.data() + width;
    const auto [stop, error] = std::from_chars(rest_.data(), end, value);
    if (error != std::errc{} || stop != end || rest_[0] == '-') return false;
    rest_.remove_prefix(width);
    return true;
  }
  bool mark(char expected) {
    if (rest_.empty() || rest_.front() != expected) return false;
    rest_.remove_prefix(1);
    return true;
  }
  [[nodiscard]] bool at_end() const { return rest_.empty(); }
  [[nodiscard]] std::string_view rest() const { return rest_; }

 private:
  std::string_view rest_;
};

std::optional<Day> read_day(Reader& reader) {
  int y = 0;
  int m = 0;
  int d = 0;
  if (!(reader.digits(4, y) && reader.mark('-') && reader.digits(2, m) && reader.mark('-') &&
        reader.digits(2, d)))
    return std::nullopt;
  const year_month_day date{year{y}, month{static_cast<unsigned>(m)},
                            day{static_cast<unsigned>(d)}};
  if (!date.ok()) return std::nullopt;
  return sys_days{date};
}

std::optional<milliseconds> read_fraction(Reader& reader) {
  int value = 0;
  int width = 0;
  for (int digit = 0; width < 3 && reader.digits(1, digit); ++width) value = value * 10 + digit;
  if (width == 0) return std::nullopt;
  for (; width < 3; ++width) value *= 10;
  return milliseconds{value};
}

std::optional<milliseconds> read_time_of_day(Reader& reader) {
  int h = 0;
  int m = 0;
  int s = 0;
  milliseconds fraction{0};
  if (!(reader.digits(2, h) && reader.mark(':') && reader.digits(2, m))) return std::nullopt;
  if (reader.mark(':')) {
    if (!reader.digits(2, s)) return std::nullopt;
    if (reader.mark('.')) {
      const auto read = read_fraction(reader);
      if (!read) return std::nullopt;
      fraction = *read;
    }
  }
  if (h > 23 || m > 59 || s > 59) return std::nullopt;
  return hours{h} + minutes{m} + seconds{s} + fraction;
}

std::optional<minutes> read_offset(Reader& reader) {
  if (reader.mark('Z')) return minutes{0};
  const bool ahead = reader.mark('+');
  if (!ahead && !reader.mark('-')) return std::nullopt;
  int h = 0;
  int m = 0;
  if (!reader.digits(2, h)) return std::nullopt;
  reader.mark(':');
  if (!reader.digits(2, m) || h > 14 || m > 59) return std::nullopt;
  const minutes offset = hours{h} + minutes{m};
  return ahead ? offset : -offset;
}

tl::unexpected<Error> not_a_date(std::string_view text) {
  return failure(ErrorKind::BadInput,
                 fmt::format("\"{}\" is not a date like 2031-04-09 or a time like "
                             "2031-04-09T21:30+02:00",
                             text));
}

std::string format_offset(minutes offset) {
  const char sign = offset < minutes{0} ? '-' : '+';
  const auto size = abs(offset).count();
  return fmt::format("{}{:02}:{:02}", sign, size / 60, size % 60);
}

}  // namespace

double days_between(Instant from, Instant to) {
  return duration<double, days::period>(to - from).count();
}

Result<Day> parse_day(std::string_view text) {
  Reader reader(text);
  const auto day = read_day(reader);
  if (!day || !reader.at_end()) return not_a_date(text);
  return *day;
}

std::string format_day(Day day) {
  const year_month_day date{day};
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                     static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

Result<When> parse_when(std::string_view text, minutes offset_of_days) {
  Reader reader(text);
  const auto day = read_day(reader);
  if (!day) return not_a_date(text);
  if (reader.at_end()) return on_day(*day, offset_of_days);
  if (!reader.mark('T') && !reader.mark(' ')) return not_a_date(text);
  const auto time = read_time_of_day(reader);
  if (!time) return not_a_date(text);
  const auto offset = read_offset(reader);
  if (!offset || !reader.at_end()) return not_a_date(text);
  return When{Moment{Instant{*day} + *time - *offset, *offset}, Precision::Exact};
}

std::string format_when(const When& when) {
  if (when.precision == Precision::DayOnly) return format_day(when.moment.day());
  const Instant local = when.moment.local();
  const Day day = when.moment.day();
  const hh_mm_ss<milliseconds> time{local - Instant{day}};
  std::string text = fmt::format("{}T{:02}:{:02}:{:02}", format_day(day), time.hours().count(),
                                 time.minutes().count(), time.seconds().count());
  if (time.subseconds().count() != 0) text += fmt::format(".{:03}", time.subseconds().count());
  return text + format_offset(when.moment.offset);
}

When on_day(Day day, minutes offset) {
  return When{Moment{Instant{day} + hours{12} - offset, offset}, Precision::DayOnly};
}

}  // namespace rackside
