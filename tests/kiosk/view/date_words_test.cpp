#include "kiosk/view/date_words.hpp"

#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::kiosk;
using rackside::tests::at_hour;

TEST_CASE("moments are told as one says them at the rack") {
  const Moment now = at_hour(24 * 40 + 20).moment;  // 10 February 2031, 21:00 on the wall
  CHECK(when_words(at_hour(24 * 40 + 7.5), now) == "today 08:30");
  CHECK(when_words({at_hour(24 * 40 + 7.5).moment, Precision::DayOnly}, now) == "today");
  CHECK(when_words(at_hour(24 * 39 + 7), now) == "yesterday");
  CHECK(when_words(at_hour(24 * 3), now) == "4 Jan");
  CHECK(when_words(at_hour(-24 * 30), now) == "2 Dec 2030");
}

TEST_CASE("a late evening belongs to its own day on the wall, not to the day in Greenwich") {
  const Moment now = at_hour(24 * 40 + 23.5).moment;  // half past midnight at UTC+1
  CHECK(when_words(at_hour(24 * 40 + 22.5), now) == "yesterday");
}

TEST_CASE("days are named by the calendar") {
  // 10 February 2031 is a Monday (any calendar).
  CHECK(long_day_words(Day{std::chrono::year{2031} / 2 / 10}) == "Monday 10 February");
}
