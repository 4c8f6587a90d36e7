#include "core/forecast/running.hpp"

#include <algorithm>

#include "core/forecast/traits.hpp"

namespace rackside {
namespace {

void forget_visit(std::vector<double>& visits, double day) {
  const auto visit = std::ranges::find(visits, day);
  if (visit != visits.end()) visits.erase(visit);
}

}  // namespace

std::size_t first_of_running(const Evidence& evidence) {
  if (evidence.moults.empty()) return 0;
  const auto first = std::ranges::upper_bound(evidence.observations, evidence.moults.back().latest,
                                              {}, &Observation::day);
  return static_cast<std::size_t>(first - evidence.observations.begin());
}

RunningCycle running_cycle(const Evidence& evidence, const Character& character, double now,
                           std::span<const EventId> left_out) {
  RunningCycle cycle;
  cycle.from_arrival = evidence.moults.empty();
  cycle.start_earliest = cycle.from_arrival ? evidence.arrived : evidence.moults.back().earliest;
  cycle.start_latest = cycle.from_arrival ? evidence.arrived : evidence.moults.back().latest;
  cycle.start_latest = std::min(cycle.start_latest, now);
  cycle.start_earliest = std::min(cycle.start_earliest, cycle.start_latest);
  const auto later = std::ranges::upper_bound(evidence.visits, cycle.start_latest);
  cycle.visits.assign(later, evidence.visits.end());
  const auto all = std::span(evidence.observations).subspan(first_of_running(evidence));
  const SignSet mute = mute_signs(traits_of(evidence.species), evidence.stage);
  if (left_out.empty()) {
    cycle.steps = steps_of(all, character.habits, mute);
  } else {
    std::vector<Observation> kept;
    for (const Observation& observation : all) {
      if (std::ranges::find(left_out, observation.event) == left_out.end())
        kept.push_back(observation);
      else if (observation.visit)
        forget_visit(cycle.visits, observation.day);
    }
    cycle.steps = steps_of(kept, character.habits, mute);
  }
  for (Step& step : cycle.steps) step.day = std::min(step.day, now);
  for (double& visit : cycle.visits) visit = std::min(visit, now);
  return cycle;
}

}  // namespace rackside
