#include "core/forecast/habit_fit.hpp"

#include <algorithm>

#include "core/forecast/history.hpp"
#include "core/forecast/tally.hpp"

namespace rackside {
namespace {

constexpr std::size_t last_cycles = 4;  // an animal's own habits: its last ones count
constexpr std::size_t cycles_to_learn_from = 8;

// Cycles between moults on record in which probably nothing else happened, newest last.
template <class Visit>
void each_finished_cycle(const CollectionModel& model, const Evidence& evidence,
                         const GrowthClock& clock, std::size_t most, const Visit& visit) {
  const CycleHistory history = finished_cycles(evidence, clock);
  LevelFilter filter = model.levels.filter(evidence.species, evidence.stage, evidence.instar);
  const std::size_t skipped = history.cycles.size() > most ? history.cycles.size() - most : 1;
  for (std::size_t i = 0; i < history.cycles.size(); ++i) {
    filter.observe(history.cycles[i]);
    if (i < std::max<std::size_t>(1, skipped)) continue;
    const double begins = evidence.moults[i - 1].latest - evidence.moults[i - 1].width() / 4;
    const double ends = evidence.moults[i].middle();
    const auto from = std::ranges::upper_bound(evidence.observations, evidence.moults[i - 1].latest,
                                               {}, &Observation::day);
    const auto to = std::lower_bound(from, evidence.observations.end(), ends,
                                     [](const Observation& o, double d) { return o.day < d; });
    if (from == to || ends - begins < 10) continue;
    visit(FinishedCycle{begins, ends, {from, to}}, 1 - filter.hid_a_moult());
  }
}

HabitCounts counts_of(const CollectionModel& model, const Evidence& evidence,
                      const GrowthClock& clock, std::size_t most) {
  const Habits habits = model.habits_of(evidence.species, evidence.stage);
  const SignSet mute = mute_signs(traits_of(evidence.species), evidence.stage);
  HabitCounts counts;
  each_finished_cycle(model, evidence, clock, most, [&](const FinishedCycle& cycle, double weight) {
    counts.add(tally(cycle, habits, mute), weight);
  });
  return counts;
}

}  // namespace

HabitCounts own_counts(const CollectionModel& model, const Evidence& evidence,
                       const GrowthClock& clock) {
  return counts_of(model, evidence, clock, last_cycles);
}

void learn_habits(CollectionModel& model, std::span<const Evidence* const> sample, int turns) {
  for (int turn = 0; turn < turns; ++turn) {
    HabitCounts all;
    std::array<HabitCounts, 2> fasts;
    std::map<std::string, HabitCounts> species;
    for (const Evidence* animal : sample) {
      const HabitCounts own =
          counts_of(model, *animal, model.clock_of(*animal), cycles_to_learn_from);
      all.add(own);
      fasts[animal->stage == Stage::Adult ? 1 : 0].add(own);
      species[animal->species].add(own);
    }
    model.counts = all;
    model.fasts = fasts;
    model.species = std::move(species);
  }
}

}  // namespace rackside
