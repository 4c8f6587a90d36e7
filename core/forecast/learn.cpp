#include <algorithm>
#include <cmath>
#include <functional>

#include "core/forecast/fit_sample.hpp"
#include "core/forecast/habit_fit.hpp"
#include "core/forecast/maximise.hpp"
#include "core/forecast/season_fit.hpp"

namespace rackside {
namespace {

constexpr double clearly = 3;  // log posterior by which another clock must be better

LevelModel refit(const CollectionModel& model, const FitSample& sample, const LevelModel* before) {
  return fit_levels(histories_of(model, sample), documented_priors().cycle, before);
}

// Thermal time, where somebody read a thermometer and it explains the intervals better.
void try_warmth(CollectionModel& model, const FitSample& sample) {
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
void try_wave(CollectionModel& model, const FitSample& sample) {
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

void learn_levels(CollectionModel& model, const FitSample& sample, const LevelModel* before) {
  model.warmth_threshold.reset();
  model.wave = {};
  model.levels = refit(model, sample, before);
  try_warmth(model, sample);
  if (!model.warmth_threshold && spans_seasons(sample.animals)) try_wave(model, sample);
}

}  // namespace

CollectionModel learn(std::span<const Evidence> animals, double as_of,
                      const CollectionModel* before) {
  FitSample sample = sample_of(animals, as_of);
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
    if (sample.any_trace()) model.levels = refit(model, sample, &model.levels);
  }
  learn_seasons(model, sample);
  return model;
}

}  // namespace rackside
