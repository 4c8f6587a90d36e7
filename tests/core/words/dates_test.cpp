#include "core/words/dates.hpp"

#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using rackside::tests::at_hour;

namespace {

Day day_of(int year, unsigned month, unsigned day) {
  return Day{std::chrono::year{year} / static_cast<int>(month) / static_cast<int>(day)};
}

}  // namespace

TEST_CASE("moments are told as one says them at the rack") {
  const Moment now = at_hour(24 * 40 + 20).moment;  // 10 February 2031, 21:00 on the wall
  CHECK(when_words(at_hour(24 * 40 + 7.5), now) == "today 08:30");
  CHECK(when_words({at_hour(24 * 40 + 7.5).moment, Precision::DayOnly}, now) == "today");
  CHECK(when_words(at_hour(24 * 39 + 7), now) == "yesterday");
  CHECK(when_words(at_hour(24 * 3), now) == "4 Jan");
  CHECK(when_words(at_hour(-24 * 30), now) == "2 Dec 2030");
  CHECK(when_words(at_hour(-24 * 30), now, DateStyle::MonthDay) == "Dec 2, 2030");
}

TEST_CASE("a late evening belongs to its own day on the wall, not to the day in Greenwich") {
  const Moment now = at_hour(24 * 40 + 23.5).moment;  // half past midnight at UTC+1
  CHECK(when_words(at_hour(24 * 40 + 22.5), now) == "yesterday");
}

TEST_CASE("days are told as a person would") {
  const Day monday = day_of(2031, 6, 9);
  CHECK(on_day_words(monday, monday) == "today");
  CHECK(on_day_words(monday + std::chrono::days{1}, monday) == "tomorrow");
  CHECK(on_day_words(monday + std::chrono::days{4}, monday) == "on Friday 13 June");
  CHECK(on_day_words(monday + std::chrono::days{300}, monday) == "on Sunday 4 April 2032");
  CHECK(days_ago(0) == "today");
  CHECK(days_ago(1) == "yesterday");
  CHECK(days_ago(40) == "40 days ago");
  CHECK(ago_words(monday, monday + std::chrono::days{40}) == "6 weeks ago");
  CHECK(ago_words(monday, monday + std::chrono::days{150}) == "5 months ago");
}

TEST_CASE("a date is written as the keeper reads dates") {
  const Day day = day_of(2029, 11, 3);  // a Saturday (any calendar)
  const Day later = day_of(2031, 1, 1);
  const auto full = [&](DateStyle style) { return long_day_words(day, style); };
  CHECK(full(DateStyle::DayMonth) == "Saturday 3 November");
  CHECK(full(DateStyle::MonthDay) == "Saturday, November 3");
  CHECK(full(DateStyle::Iso) == "Saturday 2029-11-03");
  CHECK(full(DateStyle::German) == "Samstag, 3. November");
  CHECK(full(DateStyle::French) == "samedi 3 novembre");
  CHECK(full(DateStyle::Spanish) == "sábado, 3 de noviembre");
  CHECK(full(DateStyle::Italian) == "sabato 3 novembre");
  CHECK(full(DateStyle::Dutch) == "zaterdag 3 november");
  CHECK(day_words(day, later, DateStyle::Iso) == "2029-11-03");
  CHECK(day_words(day, later, DateStyle::German) == "3. Nov. 2029");
  CHECK(day_words(day, day, DateStyle::MonthDay) == "Nov 3");
  CHECK(on_day_words(later, day, DateStyle::Spanish) == "on miércoles, 1 de enero de 2031");
}

TEST_CASE("two days of a month share its name where it comes last") {
  const Day day = day_of(2029, 11, 3);
  const Day later = day + std::chrono::days{5};
  CHECK(two_days_words(day, later) == "Saturday 3 and Thursday 8 November");
  CHECK(two_days_words(day, day + std::chrono::days{30}) ==
        "Saturday 3 November and Monday 3 December");
  CHECK(two_days_words(day, day + std::chrono::days{365}) ==
        "Saturday 3 November and Sunday 3 November");
  CHECK(two_days_words(day, later, DateStyle::Iso) ==
        "Saturday 2029-11-03 and Thursday 2029-11-08");
  CHECK(two_days_words(day, later, DateStyle::German) ==
        "Samstag, 3. November and Donnerstag, 8. November");
}

TEST_CASE("days that a sentence leaves open are filled in") {
  using namespace std::chrono;
  const Day today = sys_days{2027y / 6 / 12};
  const std::vector<Day> days{sys_days{2026y / 11 / 3}, sys_days{2027y / 6 / 1}};
  CHECK(with_days("from {0} to {1}", days, today, DateStyle::DayMonth) ==
        "from 3 Nov 2026 to 1 Jun");
  CHECK(with_days("since {1}", days, today, DateStyle::Iso) == "since 2027-06-01");
  CHECK(with_days("none here", days, today, DateStyle::Iso) == "none here");
  CHECK(with_days("no {0}", {}, today, DateStyle::Iso) == "no {0}");
}

TEST_CASE("the first of a month is an ordinal in French only") {
  CHECK(long_day_words(day_of(2031, 5, 1), DateStyle::French) == "jeudi 1er mai");
  CHECK(long_day_words(day_of(2031, 5, 11), DateStyle::French) == "dimanche 11 mai");
  CHECK(long_day_words(day_of(2031, 5, 1), DateStyle::Italian) == "giovedì 1 maggio");
}

TEST_CASE("every style is found again by its name") {
  for (const DateStyle style : all_date_styles)
    CHECK(date_style_of(date_style_name(style)) == style);
  CHECK_FALSE(date_style_of("roman"));
}
