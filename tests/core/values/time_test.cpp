#include "core/values/time.hpp"

#include "core/values/units.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace std::chrono_literals;

namespace {
constexpr auto no_offset = std::chrono::minutes{0};
}

TEST_CASE("a date alone becomes noon at the given offset, known to the day") {
  const auto when = parse_when("2031-04-09", 120min);
  REQUIRE(when);
  CHECK(when->precision == Precision::DayOnly);
  CHECK(when->moment.day() == Day{std::chrono::year{2031} / 4 / 9});
  CHECK(when->moment.utc == Instant{Day{std::chrono::year{2031} / 4 / 9}} + 10h);
  CHECK(format_when(*when) == "2031-04-09");
}

TEST_CASE("a time with an offset is the same instant as its UTC form") {
  // RFC 3339 section 5.8 gives these two as the same instant.
  const auto local = parse_when("1996-12-19T16:39:57-08:00", no_offset);
  const auto utc = parse_when("1996-12-20T00:39:57Z", no_offset);
  REQUIRE(local);
  REQUIRE(utc);
  CHECK(local->moment.utc == utc->moment.utc);
  CHECK(local->moment.day() != utc->moment.day());
  // Same section: a fraction of a second.
  const auto fraction = parse_when("1985-04-12T23:20:50.52Z", no_offset);
  REQUIRE(fraction);
  CHECK(format_when(*fraction) == "1985-04-12T23:20:50.520+00:00");
}

TEST_CASE("texts that are no dates are refused") {
  for (const char* text : {"", "yesterday", "2031-4-9", "2031-13-01", "2031-02-29", "2031-04-09T",
                           "2031-04-09T25:00Z", "2031-04-09T21:30", "2031-04-09T21:30+2",
                           "2031-04-09T21:30Zx", "-031-04-09", "2031-04-09T-1:30Z"}) {
    INFO(text);
    const auto when = parse_when(text, no_offset);
    REQUIRE_FALSE(when);
    CHECK(when.error().kind == ErrorKind::BadInput);
  }
}

TEST_CASE("a leap day exists in leap years only") {
  CHECK(parse_day("2028-02-29"));
  CHECK_FALSE(parse_day("2031-02-29"));
  CHECK_FALSE(parse_day("2100-02-29"));  // Gregorian calendar: a century not divisible by 400
}

TEST_CASE("moments survive being written and read") {
  rc::prop("format_when then parse_when is the identity", [] {
    const auto ms = *rc::gen::inRange<std::int64_t>(0, 4'000'000'000'000);
    const auto offset = std::chrono::minutes{*rc::gen::inRange(-14 * 60, 14 * 60)};
    const When when{Moment{Instant{std::chrono::milliseconds{ms}}, offset}, Precision::Exact};
    const auto read = parse_when(format_when(when), no_offset);
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == when);
  });
}

TEST_CASE("units turn at the edge") {
  CHECK(from_inches(4.5).value == Approx(114.3));  // an inch is 25.4 mm by definition (1959)
  CHECK(from_fahrenheit(77).value == Approx(25.0));
  CHECK(to_fahrenheit(from_fahrenheit(68.5)) == Approx(68.5));
}
