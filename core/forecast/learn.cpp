#include <algorithm>
#include <functional>
#include <map>

#include "core/forecast/collection_model.hpp"
#include "core/forecast/habit_fit.hpp"
#include "core/forecast/history.hpp"
#include "core/forecast/season_fit.hpp"

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

std::vector<SpeciesHistories> histories_of(const CollectionModel& model,
                                           std::span<const Evidence* const> sample, double as_of) {
  std::map<std::string, SpeciesHistories> by_species;
  for (const Evidence* animal : sample) {
    CycleHistory history = all_cycles(*animal, model.clock_of(*animal), as_of);
    if (history.cycles.empty()) continue;
    SpeciesHistories& species = by_species[animal->species];
    species.species = animal->species;
    species.animals.push_back(std::move(history));
  }
  std::vector<SpeciesHistories> histories;
  for (auto& [name, species] : by_species) histories.push_back(std::move(species));
  return histories;
}

LevelModel levels_by(CollectionModel& model, std::optional<double> threshold,
                     std::span<const Evidence* const> sample, double as_of,
                     const LevelModel* before) {
  model.warmth_threshold = threshold;
  return fit_levels(histories_of(model, sample, as_of), documented_priors().cycle, before);
}

// The clock under which what was seen is most probable; the wall clock unless thermal time is
// clearly better.
void learn_levels(CollectionModel& model, std::span<const Evidence* const> sample, double as_of,
                  const LevelModel* before) {
  constexpr double clearly = 2;  // log posterior
  LevelModel best = levels_by(model, std::nullopt, sample, as_of, before);
  std::optional<double> chosen;
  const bool warmth_known = std::ranges::any_of(sample, [](auto* e) { return !e->warmth.empty(); });
  if (warmth_known)
    for (const double threshold : documented_priors().warmth.thresholds) {
      LevelModel other = levels_by(model, threshold, sample, as_of, &best);
      if (other.log_posterior < best.log_posterior + (chosen ? 0 : clearly)) continue;
      best = std::move(other);
      chosen = threshold;
    }
  model.warmth_threshold = chosen;
  model.levels = std::move(best);
}

}  // namespace

CollectionModel learn(std::span<const Evidence> animals, double as_of,
                      const CollectionModel* before) {
  const auto sample = sample_of(animals);
  CollectionModel model;
  if (before != nullptr) model = *before;
  model.moults = 0;
  for (const Evidence& animal : animals) model.moults += animal.moults.size();
  learn_levels(model, sample, as_of, before != nullptr ? &before->levels : nullptr);
  learn_habits(model, sample, before != nullptr ? 1 : 4);
  learn_seasons(model, sample);
  return model;
}

}  // namespace rackside
