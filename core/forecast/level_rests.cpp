#include "core/forecast/level_rests.hpp"

#include <algorithm>
#include <cmath>

#include "core/forecast/level_numbers.hpp"
#include "core/forecast/species_shift.hpp"

namespace rackside {
namespace {

constexpr int turns = 4;

// What is left over of each finished cycle, given all that was known before it, with how much it
// weighs and the instar it was in.
template <class Visit>
void each_rest(const LevelModel& model, std::span<const SpeciesHistories> histories,
               const Visit& visit) {
  for (const SpeciesHistories& species : histories)
    for (const CycleHistory& animal : species.animals) {
      LevelFilter filter(model.parameters, without_variance(model.shifts.at(species.species)),
                         animal.stage, animal.instar);
      for (const LoggedCycle& cycle : animal.cycles) {
        const auto instar = filter.instar();
        const double deviation = filter.length()[0].deviation;
        filter.observe(cycle);
        if (cycle.running || cycle.start == LoggedCycle::Start::Arrival) continue;
        visit(instar, filter.rest(),
              (1 - filter.hid_a_moult()) / (deviation * deviation + cycle.noise));
      }
    }
}

// A straight line by weighed least squares through what is already held of it.
struct Line {
  double weight = 0, x = 0, y = 0, xx = 0, xy = 0;

  void add(double more, double at_x, double at_y) {
    weight += more;
    x += more * at_x;
    y += more * at_y;
    xx += more * at_x * at_x;
    xy += more * at_x * at_y;
  }
  [[nodiscard]] double slope() const { return (weight * xy - x * y) / (weight * xx - x * x); }
  [[nodiscard]] double at_zero() const { return (y - slope() * x) / weight; }
};

Line line_of(const MealPriors& priors) {
  constexpr double apart = 0.6;  // of the log length: slings and adults from juveniles
  const UsualMeals usual = usual_meals(priors);
  Line line;
  for (const double off : {-apart, apart}) {
    const double level = std::log(priors.reference) + off;
    line.add(priors.cycles / 2, level, usual.at(level));
  }
  return line;
}

}  // namespace

void fit_usual_meals(LevelModel& model, std::span<const SpeciesHistories> histories) {
  Line line = line_of(documented_priors().meals);
  for (const SpeciesHistories& species : histories)
    for (const CycleHistory& animal : species.animals) {
      LevelFilter filter(model.parameters, without_variance(model.shifts.at(species.species)),
                         animal.stage, animal.instar);
      for (const LoggedCycle& cycle : animal.cycles) {
        const double level = filter.level().mean;
        const MealGaps& meals = cycle.meals;
        filter.observe(cycle);
        if (meals.days > 0)
          line.add(std::min(1.0, meals.gaps / 4), level, std::log(meals.days / meals.gaps));
      }
    }
  model.parameters.meals = {line.at_zero(), line.slope()};
}

void find_scale(LevelModel& model, std::span<const SpeciesHistories> histories) {
  for (int turn = 0; turn < turns; ++turn) {
    double weight = 1, sum = 0;
    each_rest(model, histories, [&](auto, double rest, double precision) {
      weight += precision;
      sum += precision * rest;
    });
    for (double& start : model.parameters.start) start += sum / weight;
  }
}

void fit_instars(LevelModel& model, std::span<const SpeciesHistories> histories, double spread) {
  constexpr double prior_instars = 3;  // for how many the prior's spread counts
  double variance = spread * spread;
  for (int turn = 0; turn < turns; ++turn) {
    std::array<double, instars> weight{}, sum{};
    each_rest(model, histories, [&](auto instar, double rest, double precision) {
      if (!instar) return;
      weight[std::min(*instar, instars - 1)] += precision;
      sum[std::min(*instar, instars - 1)] += precision * rest;
    });
    double steps = prior_instars;
    double squares = prior_instars * spread * spread;
    for (std::size_t i = 0; i < instars; ++i) {
      double& at = model.parameters.at_instar[i];
      double& unknown = model.parameters.at_instar_variance[i];
      unknown = 1 / (weight[i] + 1 / variance);
      at = unknown * (weight[i] * at + sum[i]);
      if (weight[i] == 0) continue;
      ++steps;
      squares += at * at + unknown;
    }
    variance = squares / steps;
  }
}

}  // namespace rackside
