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

namespace {

double share(std::size_t part, std::size_t whole) {
  return whole > 0 ? static_cast<double>(part) / static_cast<double>(whole) : 0.0;
}

struct Withheld {
  std::size_t dangerous = 0, ordinary = 0;
  double threshold = 0;  // the smallest chance of danger at which a meal was withheld
};

// Meals withheld from the most dangerous down, until one more would be an ordinary meal too many or
// enough dangerous ones are avoided.
Withheld withhold(const std::vector<Meal>& worst_first, std::size_t most_ordinary,
                  std::size_t enough_dangerous) {
  Withheld withheld;
  for (const Meal& meal : worst_first) {
    if (withheld.dangerous >= enough_dangerous) break;
    if (!meal.dangerous && withheld.ordinary == most_ordinary) break;
    (meal.dangerous ? withheld.dangerous : withheld.ordinary) += 1;
    withheld.threshold = meal.chance_of_danger;
  }
  return withheld;
}

}  // namespace

DangerScore score_meals(std::vector<Meal> meals) {
  DangerScore score;
  Withheld two;  // refusals
  for (const Meal& meal : meals) {
    (meal.dangerous ? score.dangerous : score.ordinary) += 1;
    if (meal.two_refusals) (meal.dangerous ? two.dangerous : two.ordinary) += 1;
  }
  std::ranges::stable_sort(meals, std::greater{}, &Meal::chance_of_danger);
  const auto few = static_cast<std::size_t>(needlessly * static_cast<double>(score.ordinary));
  const Withheld sparing = withhold(meals, few, score.dangerous);
  const Withheld as_often = withhold(meals, two.ordinary, score.dangerous);
  const Withheld as_safe = withhold(meals, score.ordinary, two.dangerous);
  score.threshold = sparing.threshold;
  score.avoided_by_forecast = share(sparing.dangerous, score.dangerous);
  score.avoided_by_two_refusals = share(two.dangerous, score.dangerous);
  score.withheld_by_two_refusals = share(two.ordinary, score.ordinary);
  score.avoided_withholding_as_often = share(as_often.dangerous, score.dangerous);
  score.withheld_avoiding_as_many = share(as_safe.ordinary, score.ordinary);
  return score;
}

}  // namespace rackside
