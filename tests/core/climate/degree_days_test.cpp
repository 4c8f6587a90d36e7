#include "core/climate/degree_days.hpp"

#include "tests/frame.hpp"

using namespace rackside;

TEST_CASE("degree-days by sine and by triangle give the published and computed values") {
  // Baskerville & Emin 1969, Ecology 50:514-517; Allen 1976; first pair published as 0.47 and 0.29
  // in the TrenchR documentation, the rest computed by the same method. Margin 1e-9.
  struct Row {
    DayOfWarmth day;
    double sine, triangle;
  };
  for (const Row& row : {Row{{7, 14, 12, 33}, 0.4680586881, 0.2857142857},
                         Row{{40, 70, 50, 1000}, 7.5424488206, 6.6666666667},
                         Row{{15, 35, 10, 30}, 13.9100221896, 14.375},
                         Row{{5, 25, 10, 1000}, 6.0899778104, 5.625}}) {
    CHECK(degree_days_by_sine(row.day) == Approx(row.sine).margin(1e-9));
    CHECK(degree_days_by_triangle(row.day) == Approx(row.triangle).margin(1e-9));
  }
}
