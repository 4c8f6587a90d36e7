#include "core/forecast/season_fit.hpp"

#include <cmath>
#include <map>
#include <vector>

#include "core/forecast/history.hpp"
#include "core/forecast/maximise.hpp"

namespace rackside {
namespace {

// A moult on record, and the days on which it might as well have been, going by lengths alone.
struct Choice {
  YearWaves moult{};
  std::vector<YearWaves> days;
  std::vector<double> weights;  // sum 1
};

constexpr int points = 25;
constexpr double reach = 3;

Choice choice_of(const LengthComponent& length, double hidden, const MoultSpan& last,
                 const MoultSpan& moult, const GrowthClock& clock) {
  Choice choice{.moult = year_waves(moult.middle())};
  double sum = 0;
  for (int i = 0; i < points; ++i) {
    const double z = reach * (2.0 * i / (points - 1) - 1);
    choice.days.push_back(
        year_waves(clock.after(last.middle(), std::exp(length.mean + length.deviation * z))));
    choice.weights.push_back(std::exp(-z * z / 2));
    sum += choice.weights.back();
  }
  for (double& weight : choice.weights) weight /= sum;
  if (hidden > 0.5) choice.days.clear();
  return choice;
}

void add_choices(std::vector<Choice>& choices, const CollectionModel& model,
                 const Evidence& animal) {
  const GrowthClock clock = model.clock_of(animal);
  const CycleHistory history = finished_cycles(animal, clock);
  LevelFilter filter = model.levels.filter(animal.species, animal.stage, animal.instar);
  for (std::size_t i = 0; i < history.cycles.size(); ++i) {
    LevelFilter fed = filter;
    fed.feed(history.cycles[i].meals);
    const LengthComponent length = fed.length()[0];
    filter.observe(history.cycles[i]);
    if (i == 0) continue;
    Choice choice =
        choice_of(length, filter.hid_a_moult(), animal.moults[i - 1], animal.moults[i], clock);
    if (!choice.days.empty()) choices.push_back(std::move(choice));
  }
}

double log_likelihood(const std::vector<Choice>& choices, const Season& season) {
  double sum = 0;
  for (const Choice& choice : choices) {
    double all = 0;
    for (std::size_t i = 0; i < choice.days.size(); ++i)
      all += choice.weights[i] * season_tilt(season, choice.days[i]);
    sum += std::log(season_tilt(season, choice.moult) / all);
  }
  return sum;
}

// None unless it explains clearly more than `middle` does.
Season fit(const std::vector<Choice>& choices, const Season& middle, const SeasonPriors& priors) {
  const double spread = priors.spread;
  const Objective objective = [&](const std::vector<double>& at) {
    Season season{};
    double penalty = 0;
    for (std::size_t i = 0; i < season.size(); ++i) {
      season[i] = at[i];
      // The half-year's wave is there to sharpen the year's, and is held back more.
      const double z = (at[i] - middle[i]) / (i < 2 ? spread : spread / 2);
      penalty += z * z / 2;
    }
    return log_likelihood(choices, season) - penalty;
  };
  const auto at = maximise(objective, {middle.begin(), middle.end()},
                           {.most_steps = 25, .tolerance = 1e-3, .step = 1e-4});
  const Season season{at[0], at[1], at[2], at[3]};
  const double gained = log_likelihood(choices, season) - log_likelihood(choices, middle);
  return gained >= priors.at_least ? season : middle;
}

}  // namespace

void learn_seasons(CollectionModel& model, std::span<const Evidence* const> sample) {
  std::map<std::string, std::vector<Choice>> by_species;
  std::vector<Choice> all;
  for (const Evidence* animal : sample) {
    if (animal->stage != Stage::Adult) continue;
    add_choices(by_species[animal->species], model, *animal);
  }
  for (const auto& [species, choices] : by_species)
    all.insert(all.end(), choices.begin(), choices.end());
  const SeasonPriors& priors = documented_priors().season;
  model.season = {};
  model.species_season.clear();
  if (all.empty()) return;
  model.season = fit(all, {}, priors);
  for (const auto& [species, choices] : by_species)
    model.species_season[species] = fit(choices, model.season, priors);
}

}  // namespace rackside
