#include "core/forecast/observed.hpp"

#include <algorithm>
#include <cmath>

namespace rackside {

Observed::Observed(const Character& character, const RunningCycle& cycle, double as_of)
    : character_(character), cycle_(cycle), steps_(cycle.steps) {
  premoult_.reserve(steps_.size() + 1);
  premoult_.push_back(0);
  for (std::size_t k = 0; k < steps_.size(); ++k) {
    const Step& step = steps_[k];
    const double day = step.day - std::floor(steps_.front().day);
    steps_by_day_.resize(static_cast<std::size_t>(day) + 1, k);
    premoult_.push_back(premoult_.back() + std::log(step.premoult));
    if (step.on_its_back) backs_.push_back(step.day);
  }
  opening_.run(steps_, {cycle.start_latest, cycle.from_arrival, character.lengths.all[0].mean},
               as_of, character.habits);
}

// Asked for some ten thousand times a forecast.
std::size_t Observed::steps_before(double day) const {
  if (steps_.empty() || day <= steps_.front().day) return 0;
  if (day > steps_.back().day) return steps_.size();
  std::size_t step = steps_by_day_[static_cast<std::size_t>(day - std::floor(steps_.front().day))];
  while (steps_[step].day < day) ++step;
  return step;
}

double Observed::on_its_back(const MoultCell& moult) const {
  double factor = 0;
  for (const double day : backs_)
    if (moult.to > day - 0.5 && moult.from < day + 2)
      factor += std::log(character_.habits.last_hours_factor);
  return factor;
}

double Observed::unnoticed(double moult) const {
  const auto visits = cycle_.visits.end() - std::ranges::upper_bound(cycle_.visits, moult);
  const double passed_over =
      visits > 12 ? 0 : std::pow(1 - character_.noticed_a_visit, static_cast<int>(visits));
  return character_.unseen_share + (1 - character_.unseen_share) * passed_over;
}

}  // namespace rackside
