// What stands on the moult strip beside marks and forecast.

#include "kiosk/view/strip_view.hpp"

#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

constexpr double day = 24;

std::vector<Event> history(std::initializer_list<std::pair<double, Details>> events) {
  std::vector<Event> list{make_event(1, 0, animal_number(1), AnimalAdded{.key = "a"})};
  int order = 1;
  for (const auto& [days, details] : events)
    list.push_back(make_event(++order, days * day, animal_number(1), details));
  return list;
}

StripView strip(const std::vector<Event>& events, const EventId* newest = nullptr,
                const WarmDays* warmth = nullptr) {
  return *view_strip({.history = events,
                      .now = at_hour(40 * day).moment,
                      .wording = {},
                      .newest = newest,
                      .warmth = warmth,
                      .rack = "A"});
}

}  // namespace

TEST_CASE("only the record that was made just now lands") {
  const auto events = history({{2, Offered{Outcome::Took}}, {9, Offered{Outcome::Refused}}});
  const EventId newest = events.back().id;
  const auto marks = strip(events, &newest).marks;
  REQUIRE(marks.size() == 2);
  CHECK_FALSE(marks[0].landed);
  CHECK(marks[1].landed == newest);
}

TEST_CASE("signs run from the look that saw them first to the last that did") {
  const Looked dark{SignSet{Sign::DarkAbdomen}}, nothing{};
  const auto runs =
      strip(history({{2, dark}, {5, dark}, {9, dark}, {12, nothing}, {15, dark}, {20, dark}})).runs;
  REQUIRE(runs.size() == 2);
  CHECK(std::abs(runs[0].from - 2) < 1e-9);
  CHECK(std::abs(runs[0].to - 9) < 1e-9);
  CHECK(std::abs(runs[1].from - 15) < 1e-9);
  CHECK(strip(history({{2, dark}, {3, nothing}, {4, dark}})).runs.empty());
}

TEST_CASE("warmth is told with its ends and lies within its band, one reading is not enough") {
  WarmDays warmth;
  const auto read = [&](double at, double degrees) {
    Event event = make_event(1, at * day, {}, TemperatureRead{Celsius{degrees}, "A"});
    event.animal.reset();
    apply(warmth, event);
  };
  read(1, 22);
  read(2, 30);
  CHECK_FALSE(strip(history({}), nullptr, &warmth).warmth);
  read(20, 24);
  const auto shown = strip(history({}), nullptr, &warmth).warmth;
  REQUIRE(shown);
  CHECK(shown->words == "air 22 to 30 \u00B0C");
  for (const double part : shown->part) CHECK((part >= 0 && part <= 1));
}

TEST_CASE("the strip of a list goes from the last moult to where the next is nearly certain") {
  const auto events = history({{10, ShedFound{}}});
  const AnimalState animal = *fold_animal(events);
  Forecast forecast{.animal = animal.id};
  for (std::size_t i = 0; i < forecast.next_moult.size(); ++i)
    forecast.next_moult[i] = 10.0 * static_cast<double>(i);
  const auto shown = small_strip(animal, &forecast, at_hour(40 * day).moment);
  REQUIRE(shown);
  CHECK(shown->today > 0);
  CHECK(shown->today <= shown->q05);
  CHECK(shown->q05 < shown->q25);
  CHECK(shown->q25 < shown->q75);
  CHECK(shown->q75 < shown->q95);
  CHECK(shown->q95 <= 1);
  // 30 of 210 days.
  CHECK(std::abs(shown->today / shown->q95 - 30.0 / 210) < 1e-6);
  forecast.moult_expected = false;
  CHECK_FALSE(small_strip(animal, &forecast, at_hour(40 * day).moment));
}

TEST_CASE("a moult that is long past due lies before today on the strip of a list") {
  const AnimalState animal = *fold_animal(history({}));
  Forecast forecast{.animal = animal.id};
  for (std::size_t i = 0; i < forecast.next_moult.size(); ++i)
    forecast.next_moult[i] = -30.0 + static_cast<double>(i);
  const auto shown = small_strip(animal, &forecast, at_hour(40 * day).moment);
  REQUIRE(shown);
  CHECK(shown->q95 < shown->today);
  CHECK(shown->today <= 1);
}
