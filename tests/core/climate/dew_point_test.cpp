#include "core/climate/dew_point.hpp"

#include <cmath>

#include "tests/frame.hpp"

using namespace rackside;

// Alduchov & Eskridge 1996, J. Appl. Meteor. 35:601 (17.625, 243.04): 25 C at 80 % and 20 C at 50
// %, computed. WMO-No. 8 Annex 4.B (17.62, 243.12) gives 21.30689 and 9.25517.

TEST_CASE("the dew point is the published one") {
  CHECK(dew_point(Celsius{25}, Percent{80})->value == Approx(21.30891).margin(1e-4));
  CHECK(dew_point(Celsius{20}, Percent{50})->value == Approx(9.26111).margin(1e-4));
  CHECK(dew_point(Celsius{25}, Percent{80})->value == Approx(21.30689).margin(0.01));
}

TEST_CASE("saturated air is at its dew point, drier air is above it") {
  for (double t = 5; t <= 40; t += 5) {
    CHECK(dew_point(Celsius{t}, Percent{100})->value == Approx(t).margin(1e-9));
    CHECK(dew_point(Celsius{t}, Percent{60})->value < t);
    CHECK(dew_point(Celsius{t}, Percent{60})->value > dew_point(Celsius{t}, Percent{40})->value);
  }
}

TEST_CASE("there is no dew point for readings that cannot be") {
  CHECK_FALSE(dew_point(Celsius{25}, Percent{0}));
  CHECK_FALSE(dew_point(Celsius{25}, Percent{101}));
  CHECK_FALSE(dew_point(Celsius{-60}, Percent{50}));
  CHECK_FALSE(dew_point(Celsius{std::nan("")}, Percent{50}));
}
