#include "core/forecast/grown_moults.hpp"

#include <algorithm>
#include <cmath>

#include "core/forecast/normal_points.hpp"

namespace rackside {
namespace {

constexpr double negligible = 1e-12;
const NormalPoints<GrownMoult::narrow> narrow_points(3);
const NormalPoints<GrownMoult::wide> wide_points(3);

double log_density(const LengthMixture& lengths, double log_length) {
  double sum = negligible;
  for (const LengthComponent& c : lengths)
    sum += c.weight * normal_density((log_length - c.mean) / c.deviation) / c.deviation;
  return std::log(sum);
}

GrownMoult moult_of(const LevelFilter& before, double began, double moulted,
                    const GrowthClock& clock) {
  const double log_length = std::log(std::max(1.0, clock.between(began, moulted)));
  GrownMoult moult{.part = year_part(moulted),
                   .by_lengths = log_density(before.length(), log_length)};
  std::size_t place = 0;
  const auto weigh = [&](const LengthComponent& component, const auto& points) {
    for (const double weight : points.weight) moult.weights[place++] = component.weight * weight;
  };
  // Both components: an animal that is late has had every other day to moult on, too.
  weigh(before.length()[0], narrow_points);
  weigh(before.length()[1], wide_points);
  for (std::size_t k = 0; k < season_loosenings.size(); ++k) {
    const LengthMixture law = in_season(before, season_loosenings[k]).length();
    moult.in_season[k] = log_density(law, log_length);
    place = 0;
    const auto add = [&](const LengthComponent& component, const auto& points) {
      for (const double z : points.z)
        moult.others[k][place++] =
            year_part(clock.after(began, std::exp(component.mean + component.deviation * z)));
    };
    add(law[0], narrow_points);
    add(law[1], wide_points);
  }
  return moult;
}

}  // namespace

bool is_grown(Stage stage, const LevelFilter& filter) {
  return stage == Stage::Adult ||
         filter.expected() > std::log(documented_priors().season.grown_cycle);
}

std::vector<GrownMoult> grown_moults(const CollectionModel& model, const Evidence& animal,
                                     const CycleHistory& history) {
  const GrowthClock clock = model.clock_of(animal);
  LevelFilter filter = model.levels.filter(animal.species, animal.stage, animal.instar);
  std::vector<GrownMoult> moults;
  for (std::size_t i = 0; i < history.cycles.size(); ++i) {
    LevelFilter before = filter;
    before.feed(history.cycles[i].meals);
    filter.observe(history.cycles[i]);
    const bool counts = i > 0 && is_grown(animal.stage, before) && filter.hid_a_moult() <= 0.5;
    if (!counts) continue;
    const double began = animal.moults[i - 1].middle();
    moults.push_back(moult_of(before, began, animal.moults[i].middle(), clock));
  }
  return moults;
}

Explained explain(const std::vector<GrownMoult>& moults, const YearBell& bell,
                  std::size_t loosening) {
  Explained logs;
  for (const GrownMoult& moult : moults) {
    logs.by_lengths += moult.by_lengths;
    for (std::size_t peak = 0; peak < season_peaks; ++peak) {
      double anywhere = negligible;
      for (std::size_t i = 0; i < moult.weights.size(); ++i)
        anywhere += moult.weights[i] * bell.at(moult.others[loosening][i], peak);
      logs.by_peak[peak] += moult.in_season[loosening] +
                            std::log((bell.at(moult.part, peak) + negligible) / anywhere);
    }
  }
  return logs;
}

}  // namespace rackside
