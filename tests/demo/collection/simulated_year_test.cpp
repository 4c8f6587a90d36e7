// A year of following the plan with the demo's collection, beside keepers who feed by the calendar.
// What is asserted is rough on purpose; the numbers themselves are printed.

#include <fmt/format.h>

#include <iostream>

#include "core/forecast/collection_model.hpp"
#include "core/forecast/forecast.hpp"
#include "tests/demo/collection/keepers.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

constexpr std::chrono::days week{7};

std::map<AnimalId, Forecast> no_forecast(const YearWorld&, Instant) { return {}; }

// What the plan could reach if nothing were hidden.
std::map<AnimalId, Forecast> perfect_forecast(const YearWorld& world, Instant now) {
  const Day today = std::chrono::floor<std::chrono::days>(now);
  std::map<AnimalId, Forecast> forecasts;
  for (const auto& [id, life] : world.truth()) {
    Forecast forecast{.animal = id, .as_of = now};
    forecast.p_premoult = today >= std::min(life.premoult(), life.next_moult() - week) ? 1 : 0;
    forecast.p_hardening = today - life.moulted() < week ? 1 - forecast.p_premoult : 0;
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

struct Years {
  YearCount calendar, two_refusals, plan, forecast, perfect;

  Years& operator+=(const Years& other) {
    calendar += other.calendar;
    two_refusals += other.two_refusals;
    plan += other.plan;
    forecast += other.forecast;
    perfect += other.perfect;
    return *this;
  }
};

Years years_of(int tubs, unsigned seed) {
  const auto year = [&](const YearWorld::Keeper& keeper) {
    return YearWorld(tubs, seed).live(365, keeper);
  };
  return {.calendar = year(calendar_keeper),
          .two_refusals = year(two_refusals_keeper),
          .plan = year(plan_keeper(no_forecast)),
          .forecast = year(plan_keeper(LearningForecaster{})),
          .perfect = year(plan_keeper(perfect_forecast))};
}

double missed(const YearCount& year, const Years& years) {
  return 100.0 * (years.calendar.taken - year.taken) / years.calendar.taken;
}

void print(const Years& years) {
  std::cout << fmt::format("  {:<22} {:>9} {:>12} {:>8} {:>8} {:>10} {:>8} {:>8}\n", "keeper",
                           "in danger", "per 100 days", "on back", "taken", "missed", "refused",
                           "visits");
  const auto line = [&](std::string_view who, const YearCount& year) {
    std::cout << fmt::format("  {:<22} {:>9} {:>12.2f} {:>8} {:>8} {:>8.1f} % {:>8} {:>8}\n", who,
                             year.in_danger, 100.0 * year.in_danger / year.danger_days,
                             year.on_its_back, year.taken, missed(year, years), year.refused,
                             year.visits);
  };
  line("calendar", years.calendar);
  line("two refusals", years.two_refusals);
  line("plan, no forecast", years.plan);
  line("plan, with forecast", years.forecast);
  line("plan, nothing hidden", years.perfect);
}

}  // namespace

TEST_CASE("a year of the plan offers less in the danger window than the calendar does") {
  const Years years = years_of(48, 2026);
  print(years);
  REQUIRE(years.calendar.in_danger > 30);
  CHECK(years.plan.in_danger < years.calendar.in_danger);
  CHECK(missed(years.plan, years) < 5);
  CHECK(years.forecast.in_danger < 0.4 * years.calendar.in_danger);
  CHECK(years.forecast.in_danger < years.two_refusals.in_danger);
  CHECK(missed(years.forecast, years) < 5);
  CHECK(years.perfect.in_danger == 0);
}

// Not run with the others: the figures in core/care/care.md.
TEST_CASE("the plan beside other keepers, three collections of the demo's size", "[.][figures]") {
  Years all;
  for (unsigned seed = 2026; seed < 2029; ++seed) {
    const Years years = years_of(132, seed);
    print(years);
    all += years;
  }
  std::cout << "all three\n";
  print(all);
}
