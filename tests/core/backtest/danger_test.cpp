// The decision whether to withhold a meal, on meals that can be counted by hand.

#include "core/backtest/danger.hpp"

#include "tests/frame.hpp"

using namespace rackside;

namespace {

// Two of four dangerous meals and two of ten ordinary ones come after two refusals.
std::vector<Meal> meals() {
  return {{0.9, true, true},    {0.8, false, true},   {0.7, true, false},   {0.6, false, true},
          {0.5, false, false},  {0.4, true, true},    {0.3, false, false},  {0.2, true, false},
          {0.1, false, false},  {0.09, false, false}, {0.08, false, false}, {0.07, false, false},
          {0.06, false, false}, {0.05, false, false}};
}

}  // namespace

TEST_CASE("two refusals and the forecast are compared at the same needless share") {
  const DangerScore score = score_meals(meals());
  CHECK(score.dangerous == 4);
  CHECK(score.ordinary == 10);
  CHECK(score.avoided_by_two_refusals == Approx(0.5));
  CHECK(score.withheld_by_two_refusals == Approx(0.2));
  // The two ordinary meals it may withhold are those at 0.7 and 0.5; it stops before that at 0.3.
  CHECK(score.avoided_withholding_as_often == Approx(1.0));
}

TEST_CASE("and at the same share of dangerous meals avoided") {
  // The two most dangerous meals head the list: nothing is withheld needlessly for as many.
  CHECK(score_meals(meals()).withheld_avoiding_as_many == Approx(0));
  auto worse = meals();
  worse[1].chance_of_danger = 0.65;  // now behind one ordinary meal
  CHECK(score_meals(worse).withheld_avoiding_as_many == Approx(0.1));
}

TEST_CASE("at 5 % of ten ordinary meals none may be withheld") {
  const DangerScore score = score_meals(meals());
  CHECK(score.avoided_by_forecast == Approx(0.5));
  CHECK(score.threshold == Approx(0.8));
}

TEST_CASE("no meals give no shares") {
  const DangerScore score = score_meals({});
  CHECK(score.avoided_withholding_as_often == 0);
  CHECK(score.withheld_avoiding_as_many == 0);
}
