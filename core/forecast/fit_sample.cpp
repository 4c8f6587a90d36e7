#include "core/forecast/fit_sample.hpp"

#include <algorithm>
#include <map>

#include "core/forecast/history.hpp"
#include "core/forecast/traces.hpp"

namespace rackside {
namespace {

constexpr std::size_t most_of_a_species = 30;
constexpr std::size_t most_in_all = 400;

}  // namespace

FitSample sample_of(std::span<const Evidence> animals, double as_of) {
  std::map<std::string_view, std::vector<const Evidence*>> by_species;
  for (const Evidence& animal : animals)
    if (animal.count == 1) by_species[animal.species].push_back(&animal);
  const std::size_t share = most_in_all / std::max<std::size_t>(1, by_species.size());
  const std::size_t most = std::clamp<std::size_t>(share, 3, most_of_a_species);
  FitSample sample{.animals = {}, .traces = {}, .as_of = as_of};
  for (const auto& [species, list] : by_species) {
    const std::size_t taken = std::min(most, list.size());
    for (std::size_t i = 0; i < taken; ++i) sample.animals.push_back(list[i * list.size() / taken]);
  }
  sample.traces.resize(sample.animals.size());
  return sample;
}

void find_traces(FitSample& sample, const CollectionModel& model) {
  for (std::size_t i = 0; i < sample.animals.size(); ++i) {
    const Evidence& animal = *sample.animals[i];
    sample.traces[i] = traces_of(model, animal, finished_cycles(animal, model.clock_of(animal)));
  }
}

bool FitSample::any_trace() const {
  return std::ranges::any_of(traces, [](const std::vector<double>& animal) {
    return std::ranges::any_of(animal, [](double trace) { return trace != 0; });
  });
}

std::vector<SpeciesHistories> histories_of(const CollectionModel& model, const FitSample& sample,
                                           std::size_t most) {
  std::map<std::string, SpeciesHistories> by_species;
  for (std::size_t i = 0; i < std::min(most, sample.animals.size()); ++i) {
    const Evidence* animal = sample.animals[i];
    CycleHistory history = all_cycles(*animal, model.clock_of(*animal), sample.as_of);
    add_traces(history, sample.traces[i]);
    if (history.cycles.empty()) continue;
    SpeciesHistories& species = by_species[animal->species];
    species.species = animal->species;
    species.animals.push_back(std::move(history));
  }
  std::vector<SpeciesHistories> histories;
  for (auto& [name, species] : by_species) histories.push_back(std::move(species));
  return histories;
}

}  // namespace rackside
