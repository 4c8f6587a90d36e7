// What the weeks ahead say.

#include "kiosk/view/weeks_view.hpp"

#include <cmath>

#include "core/forecast/quantiles.hpp"
#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using kiosk::view_week_row;
using kiosk::view_weeks;

namespace {

// Evenly spread from one day to another, counted from now.
Forecast even(AnimalId animal, Instant now, double from, double to) {
  Forecast forecast{.animal = animal, .as_of = now};
  for (std::size_t i = 0; i < moult_quantiles; ++i)
    forecast.next_moult[i] = from + (to - from) * static_cast<double>(i + 1) / 20;
  return forecast;
}

struct Room {
  TableKiosk kiosk;
  std::vector<Code> tubs;

  explicit Room(int count) {
    for (int i = 1; i <= count; ++i) tubs.push_back(kiosk.house(i, "Ephebopus cyanognathus"));
    kiosk.start();
  }
  void believe(std::size_t tub, double from, double to, double unseen = 0) {
    Forecast forecast = even(kiosk.animal_of(tubs[tub]), kiosk.clock.now().utc, from, to);
    forecast.p_moulted_unseen = unseen;
    kiosk.does(kiosk::ForecastReady{forecast, {}});
  }
};

}  // namespace

TEST_CASE("the chance of a moult by a day follows the quantiles, and their slope beyond them") {
  const Forecast forecast = even({}, {}, 0, 100);
  for (const double day : {2.0, 5.0, 37.5, 50.0, 95.0, 99.0})
    CHECK(probability_by(forecast, day) == Approx(day / 100));
  CHECK(probability_by(forecast, -3) == 0);
  CHECK(probability_by(forecast, 140) == 1);
  CHECK(quantile(forecast, 0.25) == Approx(25));
}

TEST_CASE("the moults to expect in a week are the sum of the chances in it") {
  // 10 February 2031, 21:00 on the wall, is a Monday: the first week has 6 days and 3 hours left.
  Room room(2);
  room.believe(0, 0, 56);
  room.believe(1, 0, 28);
  const auto view = view_weeks(room.kiosk.model());
  REQUIRE(view.weeks.size() == kiosk::weeks_shown);
  CHECK(view.today == Approx(21.0 / 24));
  CHECK(view.weeks[0].expected == Approx(6.125 / 56 + 6.125 / 28).epsilon(1e-6));
  CHECK(view.weeks[1].expected == Approx(7.0 / 56 + 7.0 / 28).epsilon(1e-6));
  CHECK(view.weeks[6].expected == Approx(7.0 / 56).epsilon(1e-6));
  CHECK(view.weeks[0].month == "Feb");
  CHECK(view.weeks[0].day == "10");
  CHECK(view.weeks[3].month == "Mar");
  CHECK(view.weeks[3].day == "3");
  CHECK(view.weeks[1].expected_words == "0.4");
}

TEST_CASE("how many moults there may be is told with its range") {
  // Forty animals, each with one chance in two within the weeks left: 20 are expected, with a
  // standard deviation of the binomial distribution, sqrt(40 / 4) = 3.16; 8 of 10 lie within 1.28
  // of them.
  Room room(40);
  for (std::size_t i = 0; i < 40; ++i) room.believe(i, 0, 2 * (56 - 21.0 / 24));
  CHECK(view_weeks(room.kiosk.model()).summary == "about 20 moults, likely 16 to 24");
}

TEST_CASE("those that may have moulted unseen come first, then the next to moult") {
  Room room(4);
  room.believe(0, 20, 40);
  room.believe(1, 10, 20);
  room.believe(2, -20, 60, 0.7);
  room.believe(3, 90, 300);
  const auto view = view_weeks(room.kiosk.model());
  const auto animal = [&](std::size_t i) { return room.kiosk.animal_of(room.tubs[i]); };
  CHECK(view.animals == std::vector<AnimalId>{animal(2), animal(1), animal(0)});
  CHECK(view.unseen == 1);
  const auto row = view_week_row(room.kiosk.model(), animal(2));
  CHECK(row.unseen == "unseen: 7 of 10");
  CHECK(row.place == "A1-1");
  CHECK(row.median == Approx(20 + 21.0 / 24));
}

TEST_CASE("a forecast that is days old is told from today") {
  Room room(1);
  room.believe(0, 10, 20);
  room.kiosk.clock.advance(std::chrono::hours{48});
  room.kiosk.does(kiosk::Show{kiosk::ScreenName::Weeks});
  const auto row = view_week_row(room.kiosk.model(), room.kiosk.animal_of(room.tubs[0]));
  CHECK(row.median == Approx(15 + 21.0 / 24));
}
