#include "core/forecast/collection_model.hpp"

#include <algorithm>
#include <cmath>

#include "core/forecast/habit_fit.hpp"
#include "core/forecast/history.hpp"
#include "core/forecast/season_fit.hpp"
#include "core/forecast/traces.hpp"

namespace rackside {
namespace {

bool starts_within_a_wide_span(const Evidence& evidence, const GrowthClock& clock, double cycle) {
  if (evidence.moults.empty()) return false;
  const MoultSpan& last = evidence.moults.back();
  return clock.between(last.earliest, last.latest) > wide_span * cycle;
}

}  // namespace

GrowthClock CollectionModel::clock_of(const Evidence& evidence) const {
  if (!warmth_threshold || evidence.warmth.empty()) return GrowthClock(wave);
  return GrowthClock(evidence.warmth, *warmth_threshold, documented_priors().warmth);
}

Habits CollectionModel::habits_of(const std::string& name, Stage stage) const {
  const Priors& priors = documented_priors();
  HabitCounts collection = counts;
  const HabitCounts& alike = fasts[stage == Stage::Adult ? 1 : 0];
  collection.fasts = alike.fasts;
  collection.fasts_ended = alike.fasts_ended;
  collection.feeding_days = alike.feeding_days;
  collection.fasting_days = alike.fasting_days;
  const Habits of_all =
      updated(prior_habits(priors, traits_of(name), stage), collection, priors, Pool::Collection);
  const auto found = species.find(name);
  return found == species.end() ? of_all : updated(of_all, found->second, priors, Pool::Species);
}

Character CollectionModel::character_of(const Evidence& evidence) const {
  Character character;
  character.clock = clock_of(evidence);
  LevelFilter filter = levels.filter(evidence.species, evidence.stage, evidence.instar);
  CycleHistory history = finished_cycles(evidence, character.clock);
  add_traces(history, traces_of(*this, evidence, history));
  follow(filter, history);
  character.wide_span =
      starts_within_a_wide_span(evidence, character.clock, std::exp(filter.expected()));
  character.season = season_of(*this, evidence, history, filter);
  character.unfed = filter;
  character = fed(std::move(character), history.meals_since);
  const HabitCounts own = own_counts(*this, evidence, character.clock);
  character.habits =
      updated(habits_of(evidence.species, evidence.stage), own, documented_priors(), Pool::Animal);
  character.unseen_share = levels.parameters.unseen_share;
  character.noticed_a_visit = documented_priors().cycle.noticed_a_visit;
  return character;
}

CollectionModel untaught_model() {
  CollectionModel model;
  model.levels = fit_levels({}, documented_priors().cycle);
  return model;
}

}  // namespace rackside
