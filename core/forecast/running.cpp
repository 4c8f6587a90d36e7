#include "core/forecast/running.hpp"

#include <algorithm>

#include "core/forecast/traits.hpp"

namespace rackside {

std::size_t first_of_running(const Evidence& evidence) {
  if (evidence.moults.empty()) return 0;
  const auto first = std::ranges::upper_bound(
      evidence.observations, evidence.moults.back().latest, {}, &Observation::day);
  return static_cast<std::size_t>(first - evidence.observations.begin());
}

RunningCycle running_cycle(const Evidence& evidence, const Character& character, double now) {
  RunningCycle cycle;
  cycle.from_arrival = evidence.moults.empty();
  cycle.start_earliest = cycle.from_arrival ? evidence.arrived : evidence.moults.back().earliest;
  cycle.start_latest = cycle.from_arrival ? evidence.arrived : evidence.moults.back().latest;
  cycle.start_latest = std::min(cycle.start_latest, now);
  cycle.start_earliest = std::min(cycle.start_earliest, cycle.start_latest);
  const auto observations =
      std::span(evidence.observations).subspan(first_of_running(evidence));
  cycle.steps = steps_of(observations, character.habits,
                         mute_signs(traits_of(evidence.species), evidence.stage));
  for (Step& step : cycle.steps) step.day = std::min(step.day, now);
  for (const double visit : evidence.visits)
    if (visit > cycle.start_latest) cycle.visits.push_back(std::min(visit, now));
  return cycle;
}

}  // namespace rackside
