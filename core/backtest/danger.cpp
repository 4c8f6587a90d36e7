#include "core/backtest/danger.hpp"

#include <algorithm>

#include "core/backtest/hindsight.hpp"

namespace rackside {
namespace {

constexpr double needlessly = 0.05;  // of ordinary meals may be withheld

}  // namespace

double chance_of_danger(const Forecast& forecast) {
  const double soon = place_in(forecast.next_moult, danger_days);
  const double long_ago = place_in(forecast.next_moult, -danger_days);
  return std::min(1.0, std::max(0.0, soon - long_ago) + forecast.p_hardening);
}

bool refused_twice(const Evidence& animal) {
  int refused = 0;
  for (auto it = animal.observations.rbegin(); it != animal.observations.rend(); ++it) {
    if (it->kind != Observation::Kind::Offer) continue;
    if (it->outcome == Outcome::Took) return false;
    if (++refused == 2) return true;
  }
  return false;
}

DangerScore score_meals(std::vector<Meal> meals) {
  DangerScore score;
  std::size_t avoided = 0, two_avoided = 0, two_withheld = 0;
  for (const Meal& meal : meals) {
    (meal.dangerous ? score.dangerous : score.ordinary) += 1;
    if (meal.two_refusals) (meal.dangerous ? two_avoided : two_withheld) += 1;
  }
  std::ranges::sort(meals, std::greater{}, &Meal::chance_of_danger);
  const auto may_withhold =
      static_cast<std::size_t>(needlessly * static_cast<double>(score.ordinary));
  std::size_t withheld = 0;
  for (const Meal& meal : meals) {
    if (!meal.dangerous && ++withheld > may_withhold) break;
    if (meal.dangerous) ++avoided;
    score.threshold = meal.chance_of_danger;
  }
  const auto share = [](std::size_t part, std::size_t whole) {
    return whole > 0 ? static_cast<double>(part) / static_cast<double>(whole) : 0.0;
  };
  score.avoided_by_forecast = share(avoided, score.dangerous);
  score.avoided_by_two_refusals = share(two_avoided, score.dangerous);
  score.withheld_by_two_refusals = share(two_withheld, score.ordinary);
  return score;
}

}  // namespace rackside
