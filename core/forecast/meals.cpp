#include "core/forecast/meals.hpp"

#include <algorithm>
#include <utility>

namespace rackside {
namespace {

class MealCount {
 public:
  explicit MealCount(const MealPriors& priors) : priors_(priors), usual_(priors.gap) {}

  void eat(double day) {
    if (ate_) {
      const double gap = std::min(day - last_meal_, priors_.longest * usual_);
      usual_ += (gap - usual_) / (priors_.strength + 1);
      cycle_.days += gap;
      ++cycle_.gaps;
    }
    ate_ = true;
    last_meal_ = day;
  }
  void refuse() { ate_ = false; }
  MealGaps end_cycle() {
    ate_ = false;
    return std::exchange(cycle_, {});
  }

 private:
  const MealPriors& priors_;
  double usual_;
  MealGaps cycle_;
  bool ate_ = false;  // what it was last offered in the cycle at hand
  double last_meal_ = 0;
};

}  // namespace

std::vector<MealGaps> meals_by_cycle(const Evidence& evidence, const MealPriors& priors,
                                     std::span<const EventId> left_out) {
  MealCount count(priors);
  std::vector<MealGaps> meals;
  meals.reserve(evidence.moults.size() + 1);
  auto moult = evidence.moults.begin();
  for (const Observation& o : evidence.observations) {
    for (; moult != evidence.moults.end() && moult->middle() <= o.day; ++moult)
      meals.push_back(count.end_cycle());
    if (o.kind != Observation::Kind::Offer) continue;
    if (std::ranges::find(left_out, o.event) != left_out.end()) continue;
    if (o.outcome == Outcome::Took)
      count.eat(o.day);
    else
      count.refuse();
  }
  while (meals.size() <= evidence.moults.size()) meals.push_back(count.end_cycle());
  return meals;
}

}  // namespace rackside
