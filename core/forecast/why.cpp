#include "core/forecast/why.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/forecast/meals.hpp"
#include "core/forecast/observation_groups.hpp"
#include "core/forecast/running.hpp"

namespace rackside {
namespace {

constexpr std::size_t most_reasons = 5;
constexpr double least_weight = 0.05;

// How strongly a group speaks for or against premoult taken alone, and how lately: enough to choose
// the few for which the belief is computed anew.
double promise(const std::vector<Step>& steps, std::span<const Observation> observations,
               const ObservationGroup& group, double now) {
  constexpr double fades_in = 40;  // days
  double sum = 0;
  for (std::size_t i = 0; i < observations.size(); ++i)
    if (std::ranges::find(group.events, observations[i].event) != group.events.end())
      sum += (std::abs(std::log(steps[i].premoult / steps[i].feeding)) +
              std::abs(std::log(steps[i].hardening / steps[i].feeding)) / 2) *
             std::exp((observations[i].day - now) / fades_in);
  return sum;
}

std::vector<ObservationGroup> promising_groups(const RunningCycle& cycle,
                                               std::span<const Observation> observations,
                                               const Habits& habits, SignSet mute, double now) {
  constexpr double least = 0.15;
  std::vector<std::pair<double, ObservationGroup>> ranked;
  for (ObservationGroup& group : group_observations(observations, habits, mute))
    if (const double rank = promise(cycle.steps, observations, group, now); rank >= least)
      ranked.emplace_back(rank, std::move(group));
  std::ranges::stable_sort(ranked, std::greater{}, [](auto& r) { return r.first; });
  std::vector<ObservationGroup> groups;
  for (std::size_t i = 0; i < std::min(most_reasons - 1, ranked.size()); ++i)
    groups.push_back(std::move(ranked[i].second));
  return groups;
}

Reason last_moult(const Evidence& evidence, const Character& character, RunningCycle cycle,
                  double odds, double now) {
  const MoultSpan& moult = evidence.moults.back();
  const LengthComponent& usual = character.lengths.all[0];
  const auto in_days = [&](double log_length) {
    return character.clock.after(moult.middle(), std::exp(log_length)) - moult.middle();
  };
  cycle.from_arrival = true;
  const double without_day = log_odds(believe(character, cycle, now).p_premoult);
  return {fmt::format("{:.0f} days since its last moult; the next is likely after {:.0f} to {:.0f}",
                      std::max(0.0, now - moult.middle()), in_days(usual.mean - usual.deviation),
                      in_days(usual.mean + usual.deviation)),
          odds - without_day,
          {moult.event}};
}

}  // namespace

double log_odds(double p) {
  const double held = std::clamp(p, 1e-6, 1 - 1e-6);
  return std::log(held / (1 - held));
}

std::vector<Reason> reasons(const Evidence& evidence, const Character& character,
                            const Belief& belief, double now) {
  const RunningCycle cycle = running_cycle(evidence, character, now);
  const double odds = log_odds(belief.p_premoult);
  const auto observations = std::span(evidence.observations).subspan(first_of_running(evidence));
  const SignSet mute = mute_signs(traits_of(evidence.species), evidence.stage);
  std::vector<Reason> reasons;
  for (ObservationGroup& group :
       promising_groups(cycle, observations, character.habits, mute, now)) {
    const RunningCycle less = running_cycle(evidence, character, now, group.events);
    const Character changed =
        fed(character, meals_by_cycle(evidence, documented_priors().meals, group.events).back());
    const double weight = odds - log_odds(believe(changed, less, now).p_premoult);
    reasons.push_back(
        {std::move(group.text), weight, std::move(group.events), std::move(group.days)});
  }
  if (!evidence.moults.empty())
    reasons.push_back(last_moult(evidence, character, cycle, odds, now));
  std::erase_if(reasons, [](const Reason& r) { return std::abs(r.weight) < least_weight; });
  std::ranges::stable_sort(reasons, std::greater{}, [](auto& r) { return std::abs(r.weight); });
  return reasons;
}

}  // namespace rackside
