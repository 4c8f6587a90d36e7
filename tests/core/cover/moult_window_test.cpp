#include "core/cover/moult_window.hpp"

#include "tests/frame.hpp"

using namespace rackside;

namespace {

const Day today = std::chrono::year{2031} / 6 / 1;  // a Sunday

Day june(int day) { return Day{std::chrono::year{2031} / 6 / day}; }

// The moult falls anywhere from `from` to `to` days after today, all days alike.
Forecast uniform(double from, double to) {
  Forecast forecast;
  for (std::size_t i = 0; i < moult_quantiles; ++i)
    forecast.next_moult[i] = from + (to - from) * 0.05 * static_cast<double>(i + 1);
  return forecast;
}

}  // namespace

TEST_CASE("between its quantiles the share of moults is a straight line") {
  const Forecast forecast = uniform(0, 20);
  CHECK(moult_before(forecast, 10) == Approx(0.5));
  CHECK(moult_before(forecast, 3) == Approx(0.15));
  CHECK(moult_before(forecast, -1) == 0);
  CHECK(moult_before(forecast, 19.5) == Approx(0.95));
}

TEST_CASE("a moult inside the absence is told with the days of four in five") {
  const auto window = moult_window(uniform(0, 10), today, june(1), june(20), 0.1);
  REQUIRE(window);
  CHECK(window->first == june(2));
  CHECK(window->last == june(10));
  CHECK(window_sentence(*window) ==
        "May be found on its back between Monday 2 and Tuesday 10 June: leave it, nothing is wrong "
        "(more than 9 of 10 likely).");
}

TEST_CASE("a moult that may be over or may come later is told with open ends") {
  const auto early = moult_window(uniform(-10, 10), today, june(1), june(20), 0.1);
  REQUIRE(early);
  CHECK(
      window_sentence(*early).starts_with("May be found on its back any day until Monday 9 June"));
  const auto late = moult_window(uniform(10, 30), today, june(1), june(20), 0.1);
  REQUIRE(late);
  CHECK(window_sentence(*late) ==
        "May be found on its back from Friday 13 June on: leave it, nothing is wrong (5 of 10 "
        "likely).");
  const auto both = moult_window(uniform(-30, 30), today, june(1), june(9), 0.1);
  REQUIRE(both);
  CHECK(window_sentence(*both).starts_with("May be found on its back on any of these days: leave"));
}

TEST_CASE("a moult that is hardly likely, or none at all, is not told") {
  CHECK_FALSE(moult_window(uniform(18, 60), today, june(1), june(20), 0.1));
  Forecast finished = uniform(0, 10);
  finished.moult_expected = false;
  CHECK_FALSE(moult_window(finished, today, june(1), june(20), 0.1));
}

TEST_CASE("the days that are told lie in the absence, and hold a moult as often as they say") {
  rc::prop("any uniform forecast", [] {
    const double from = *rc::gen::inRange(-40, 40);
    const double length = *rc::gen::inRange(1, 60);
    const int first = *rc::gen::inRange(1, 10);
    const int last = *rc::gen::inRange(first, 28);
    const Forecast forecast = uniform(from, from + length);
    const auto window = moult_window(forecast, today, june(first), june(last), 0.1);
    const double begin = first - 1.5;
    const double end = last - 0.5;
    const double inside =
        std::max(0.0, std::min(end, from + length) - std::max(begin, from)) / length;
    // The outermost twentieths have no quantile: they may be missed or doubled.
    if (window) {
      RC_ASSERT(june(first) <= window->first);
      RC_ASSERT(window->first <= window->last);
      RC_ASSERT(window->last <= june(last));
      RC_ASSERT(std::abs(window->probability - inside) <= 0.1 + 1e-9);
    } else {
      RC_ASSERT(inside <= 0.2 + 1e-9);
    }
  });
}
