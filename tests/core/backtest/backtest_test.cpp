#include "core/backtest/backtest.hpp"

#include "core/backtest/hindsight.hpp"
#include "tests/core/forecast/invented_collection.hpp"
#include "tests/core/forecast/judge.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

Day day_number(double day) { return Day{std::chrono::days{static_cast<int>(day)}}; }

BacktestReport replay(const InventedCollection& collection, double from, double to, int every) {
  const auto at = [&](double day) {
    std::vector<Evidence> evidence;
    for (const InventedAnimal& animal : collection.animals)
      if (auto gathered = gather_evidence(animal.events, moment_of(day).utc))
        evidence.push_back(std::move(*gathered));
    return evidence;
  };
  const auto report = backtest(
      {day_number(from), day_number(to), every},
      [&](Day day) -> Result<std::vector<Evidence>> {
        return at(static_cast<double>(day.time_since_epoch().count()) + 0.99);
      },
      at(collection.ends));
  REQUIRE(report);
  return *report;
}

}  // namespace

TEST_CASE("a backtest finds the forecast better than the rules, and calibrated") {
  const auto collection = invent(worlds()[0], 60, 4 * 365, 11);
  const auto report = replay(collection, collection.begins + 700, collection.begins + 1050, 35);
  CHECK(report.cautions.empty());
  CHECK(report.moults > 50);
  for (std::size_t rule = 1; rule < report.moments.size(); ++rule)
    CHECK(report.moments[0].crps < 0.8 * report.moments[rule].crps);
  CHECK(report.moments[0].in_nine_tenths > 0.7);
  CHECK(report.moments[0].in_nine_tenths < 0.98);
  CHECK(report.brier < 0.6 * report.brier_of_share);
  CHECK(report.danger.dangerous > 20);
  const DangerScore& danger = report.danger;
  std::printf(
      "dangerous meals: two refusals avoid %.3f and withhold %.3f; the forecast avoids %.3f "
      "at that share, and withholds %.3f to avoid as many; %.3f at 5 %%\n",
      danger.avoided_by_two_refusals, danger.withheld_by_two_refusals,
      danger.avoided_withholding_as_often, danger.withheld_avoiding_as_many,
      danger.avoided_by_forecast);
  CHECK(danger.avoided_by_forecast > 0.4);
  CHECK(danger.avoided_withholding_as_often > danger.avoided_by_two_refusals);
  CHECK(danger.withheld_avoiding_as_many < danger.withheld_by_two_refusals);
}

TEST_CASE("a backtest of a small log says that it is too small") {
  const auto collection = invent(worlds()[0], 4, 500, 3);
  const auto report = replay(collection, collection.begins + 300, collection.begins + 320, 10);
  REQUIRE_FALSE(report.cautions.empty());
  CHECK(report.cautions[0].find("Too little") == 0);
}

TEST_CASE("hindsight finds where meals were no longer taken, one odd meal notwithstanding") {
  Evidence animal;
  animal.moults = {{0, 0, {}}, {100, 100, {}}};
  const auto offer = [&](double day, Outcome outcome) {
    animal.observations.push_back({.day = day, .outcome = outcome});
  };
  for (double day = 7; day < 70; day += 7) offer(day, Outcome::Took);
  for (const double day : {72.0, 79.0}) offer(day, Outcome::Refused);
  offer(84, Outcome::Took);
  for (const double day : {88.0, 92.0, 97.0}) offer(day, Outcome::Refused);
  CHECK(was_in_premoult(animal, 60) == false);
  CHECK(was_in_premoult(animal, 95) == true);
  CHECK_FALSE(was_in_premoult(animal, 120));
  CHECK(was_dangerous(animal, 95));
  CHECK_FALSE(was_dangerous(animal, 60));
}
