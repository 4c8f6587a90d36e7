// A year of following the plan beside keepers who feed by the calendar, in an invented room. What
// is asserted is rough on purpose; the numbers themselves are printed.

#include <fmt/format.h>

#include <iostream>

#include "core/forecast/collection_model.hpp"
#include "core/forecast/forecast.hpp"
#include "tests/core/round/year_world.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

constexpr int animals = 40;
constexpr int settled_after = 2 * 365;  // days of record before the year that counts

YearCount year_of(const YearWorld::Keeper& keeper, unsigned seed) {
  YearWorld world(animals, seed);
  YearCount before, year;
  world.live(settled_after, calendar_keeper, before);
  world.live(365, keeper, year);
  return year;
}

std::map<AnimalId, Forecast> no_forecast(const YearWorld&, Instant) { return {}; }

// What the plan could reach if nothing were hidden.
std::map<AnimalId, Forecast> perfect_forecast(const YearWorld& world, Instant now) {
  const Day today = std::chrono::floor<std::chrono::days>(now);
  std::map<AnimalId, Forecast> forecasts;
  for (const auto& [id, life] : world.truth()) {
    Forecast forecast{.animal = id, .as_of = now};
    forecast.p_premoult = today >= life.premoult ? 1 : 0;
    forecast.p_hardening =
        today - life.moulted < std::chrono::days{7} ? 1 - forecast.p_premoult : 0;
    forecasts.emplace(id, forecast);
  }
  return forecasts;
}

// The forecast as the kiosk runs it: learnt anew every month, told anew every morning.
class LearningForecaster {
 public:
  std::map<AnimalId, Forecast> operator()(const YearWorld& world, Instant now) {
    std::vector<Evidence> evidence;
    for (const auto& [id, life] : world.truth())
      if (auto gathered = gather_evidence(world.log_of(id), now))
        evidence.push_back(*std::move(gathered));
    const Moment as_of{now, std::chrono::minutes{60}};
    if (!learnt_ || days_between(*learnt_, now) >= 30) {
      model_ = learn(evidence, wall_day(as_of), learnt_ ? &model_ : nullptr);
      learnt_ = now;
    }
    std::map<AnimalId, Forecast> forecasts;
    for (const Evidence& animal : evidence)
      forecasts.emplace(animal.animal, forecast(model_, animal, as_of));
    return forecasts;
  }

 private:
  CollectionModel model_ = untaught_model();
  std::optional<Instant> learnt_;
};

void print(std::string_view who, const YearCount& year, const YearCount& calendar) {
  std::cout << fmt::format("  {:<22} {:>9} {:>12.2f} {:>10} {:>8.1f} % {:>10} {:>8}\n", who,
                           year.in_danger, 100.0 * year.in_danger / year.danger_days, year.taken,
                           100.0 * (calendar.taken - year.taken) / calendar.taken, year.refused,
                           year.visits);
}

void print_heading(std::string_view title) {
  std::cout << fmt::format("{}\n  {:<22} {:>9} {:>12} {:>10} {:>10} {:>10} {:>8}\n", title,
                           "keeper", "in danger", "per 100 days", "taken", "missed", "refused",
                           "visits");
}

}  // namespace

TEST_CASE("a year of the plan offers less in the danger window than the calendar does") {
  const auto calendar = year_of(calendar_keeper, 11);
  const auto two_refusals = year_of(two_refusals_keeper, 11);
  const auto plan = year_of(plan_keeper(no_forecast), 11);
  print_heading(fmt::format("{} tubs, one year", animals));
  print("calendar", calendar, calendar);
  print("two refusals", two_refusals, calendar);
  print("plan, no forecast", plan, calendar);
  const auto forecast = year_of(plan_keeper(LearningForecaster{}), 11);
  print("plan, with forecast", forecast, calendar);
  const auto perfect = year_of(plan_keeper(perfect_forecast), 11);
  print("plan, nothing hidden", perfect, calendar);
  REQUIRE(calendar.in_danger > 30);
  CHECK(plan.in_danger < calendar.in_danger);
  CHECK(plan.taken > 0.95 * calendar.taken);
  CHECK(forecast.in_danger < 0.4 * calendar.in_danger);
  CHECK(forecast.in_danger < two_refusals.in_danger);
  CHECK(forecast.taken > 0.95 * calendar.taken);
  CHECK(perfect.in_danger == 0);
}
