#include <algorithm>
#include <cmath>
#include <functional>
#include <map>

#include "core/forecast/collection_model.hpp"
#include "core/forecast/habit_fit.hpp"
#include "core/forecast/history.hpp"
#include "core/forecast/maximise.hpp"
#include "core/forecast/season_fit.hpp"
#include "core/forecast/traces.hpp"

namespace rackside {
namespace {

constexpr std::size_t most_of_a_species = 30;
constexpr std::size_t most_in_all = 400;

// Some animals of every species, evenly from the list, so that rare species are all there and the
// choice stays the same from one fit to the next. A group has no cycle of its own.
std::vector<const Evidence*> sample_of(std::span<const Evidence> animals) {
  std::map<std::string_view, std::vector<const Evidence*>> by_species;
  for (const Evidence& animal : animals)
    if (animal.count == 1) by_species[animal.species].push_back(&animal);
  const std::size_t share = most_in_all / std::max<std::size_t>(1, by_species.size());
  const std::size_t most = std::clamp<std::size_t>(share, 3, most_of_a_species);
  std::vector<const Evidence*> sample;
  for (const auto& [species, list] : by_species) {
    const std::size_t taken = std::min(most, list.size());
    for (std::size_t i = 0; i < taken; ++i) sample.push_back(list[i * list.size() / taken]);
  }
  return sample;
}

// What a fit is made from: some animals until a day, with the traces of hidden moults that are
// known of them, each by its place in the sample (none: not looked for yet).
struct Sample {
  std::vector<const Evidence*> animals;
  std::vector<std::vector<double>> traces;
  double as_of = 0;
};

void find_traces(Sample& sample, const CollectionModel& model) {
  sample.traces.clear();
  for (const Evidence* animal : sample.animals)
    sample.traces.push_back(
        traces_of(model, *animal, finished_cycles(*animal, model.clock_of(*animal))));
}

bool any_trace(const Sample& sample) {
  return std::ranges::any_of(sample.traces, [](const std::vector<double>& animal) {
    return std::ranges::any_of(animal, [](double trace) { return trace != 0; });
  });
}

std::vector<SpeciesHistories> histories_of(const CollectionModel& model, const Sample& sample,
                                           std::size_t most = SIZE_MAX) {
  std::map<std::string, SpeciesHistories> by_species;
  for (std::size_t i = 0; i < std::min(most, sample.animals.size()); ++i) {
    const Evidence* animal = sample.animals[i];
    CycleHistory history = all_cycles(*animal, model.clock_of(*animal), sample.as_of);
    if (!sample.traces.empty()) add_traces(history, sample.traces[i]);
    if (history.cycles.empty()) continue;
    SpeciesHistories& species = by_species[animal->species];
    species.species = animal->species;
    species.animals.push_back(std::move(history));
  }
  std::vector<SpeciesHistories> histories;
  for (auto& [name, species] : by_species) histories.push_back(std::move(species));
  return histories;
}

constexpr double clearly = 3;  // log posterior by which another clock must be better

LevelModel refit(const CollectionModel& model, const Sample& sample, const LevelModel* before) {
  return fit_levels(histories_of(model, sample), documented_priors().cycle, before);
}

// Thermal time, where somebody read a thermometer and it explains the intervals better.
void try_warmth(CollectionModel& model, const Sample& sample) {
  if (std::ranges::none_of(sample.animals, [](auto* e) { return !e->warmth.empty(); })) return;
  double needed = model.levels.log_posterior + clearly;
  CollectionModel other = model;
  other.wave = {};
  for (const double threshold : documented_priors().warmth.thresholds) {
    other.warmth_threshold = threshold;
    other.levels = refit(other, sample, &model.levels);
    if (other.levels.log_posterior < needed) continue;
    needed = other.levels.log_posterior;
    model = other;
  }
}

// The time over which moults are on record. In less than a year and a half a season cannot be told
// from growing up.
bool spans_seasons(std::span<const Evidence* const> sample) {
  constexpr double least_days = 550;
  double first = HUGE_VAL;
  double last = -HUGE_VAL;
  for (const Evidence* animal : sample)
    if (!animal->moults.empty()) {
      first = std::min(first, animal->moults.front().latest);
      last = std::max(last, animal->moults.back().latest);
    }
  return last - first >= least_days;
}

// A yearly wave of growth. Its height and time are sought with the lengths' parameters held.
void try_wave(CollectionModel& model, const Sample& sample) {
  constexpr std::size_t enough = 120;
  const double spread = documented_priors().season.wave;
  CollectionModel other = model;
  other.warmth_threshold.reset();
  const Objective objective = [&](const std::vector<double>& at) {
    other.wave = {at[0], at[1]};
    const double height = std::hypot(at[0], at[1]) / spread;
    return log_likelihood(histories_of(other, sample, enough), model.levels) - height * height / 2;
  };
  const auto at = maximise(objective, {model.wave.cosine, model.wave.sine},
                           {.most_steps = 8, .tolerance = 0.1, .step = 1e-3});
  if (objective(at) < objective({0, 0}) + clearly / 2) return;
  other.wave = {at[0], at[1]};
  other.levels = refit(other, sample, &model.levels);
  if (other.levels.log_posterior > model.levels.log_posterior + clearly) model = other;
}

void learn_levels(CollectionModel& model, const Sample& sample, const LevelModel* before) {
  model.warmth_threshold.reset();
  model.wave = {};
  model.levels = refit(model, sample, before);
  try_warmth(model, sample);
  if (!model.warmth_threshold && spans_seasons(sample.animals)) try_wave(model, sample);
}

}  // namespace

CollectionModel learn(std::span<const Evidence> animals, double as_of,
                      const CollectionModel* before) {
  Sample sample{.animals = sample_of(animals), .traces = {}, .as_of = as_of};
  CollectionModel model;
  if (before != nullptr) {
    model = *before;
    find_traces(sample, model);
  }
  model.moults = 0;
  for (const Evidence& animal : animals) model.moults += animal.moults.size();
  learn_levels(model, sample, before != nullptr ? &before->levels : nullptr);
  learn_habits(model, sample.animals, before != nullptr ? 1 : 4);
  if (before == nullptr) {
    find_traces(sample, model);
    if (any_trace(sample)) model.levels = refit(model, sample, &model.levels);
  }
  learn_seasons(model, sample.animals);
  return model;
}

}  // namespace rackside
