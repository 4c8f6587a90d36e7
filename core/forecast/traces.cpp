#include "core/forecast/traces.hpp"

#include <algorithm>
#include <cmath>

namespace rackside {
namespace {

constexpr double doubtful = 0.02;  // chance of a hidden moult, going by the length alone
constexpr double most = 4;         // of the log ratio
constexpr std::array shares{0.36, 0.4, 0.44, 0.48, 0.52, 0.56};  // where in the cycle it was

double log_likelihood(double begins, double ends, std::span<const Observation> observations,
                      const Habits& habits, SignSet mute) {
  if (observations.empty()) return 0;
  return chain_of({begins, ends, observations}, habits, mute).pass.log_likelihood;
}

FinishedCycle cycle_before(const Evidence& evidence, std::size_t moult) {
  const MoultSpan& start = evidence.moults[moult - 1];
  const MoultSpan& end = evidence.moults[moult];
  const auto from =
      std::ranges::upper_bound(evidence.observations, start.latest, {}, &Observation::day);
  const auto to =
      std::ranges::lower_bound(evidence.observations, end.middle(), {}, &Observation::day);
  const auto first = std::min(from, to);
  return {start.middle(), end.middle(), {first, to}};
}

}  // namespace

double trace_of_hidden_moult(const FinishedCycle& cycle, const Habits& habits, SignSet mute) {
  const auto all = cycle.observations;
  if (all.empty() || cycle.ends - cycle.begins < 20) return 0;
  const double one = log_likelihood(cycle.begins, cycle.ends, all, habits, mute);
  double two = 0;
  for (const double share : shares) {
    const double moult = std::lerp(cycle.begins, cycle.ends, share);
    const auto later = std::ranges::lower_bound(all, moult, {}, &Observation::day);
    const auto before = static_cast<std::size_t>(later - all.begin());
    two += std::exp(log_likelihood(cycle.begins, moult, all.first(before), habits, mute) +
                    log_likelihood(moult, cycle.ends, all.subspan(before), habits, mute) - one) /
           shares.size();
  }
  return std::clamp(std::log(two), -most, most);
}

std::vector<double> traces_of(const CollectionModel& model, const Evidence& evidence,
                              const CycleHistory& history) {
  std::vector<double> traces(history.cycles.size(), 0.0);
  if (evidence.observations.empty()) return traces;
  LevelFilter filter = model.levels.filter(evidence.species, evidence.stage, evidence.instar);
  const Habits habits = model.habits_of(evidence.species, evidence.stage);
  const SignSet mute = mute_signs(traits_of(evidence.species), evidence.stage);
  for (std::size_t i = 0; i < history.cycles.size(); ++i) {
    if (history.cycles[i].running) break;
    filter.observe(history.cycles[i]);
    if (history.cycles[i].start == LoggedCycle::Start::Moult && filter.hid_a_moult() > doubtful)
      traces[i] = trace_of_hidden_moult(cycle_before(evidence, i), habits, mute);
  }
  return traces;
}

void add_traces(CycleHistory& history, const std::vector<double>& traces) {
  for (std::size_t i = 0; i < std::min(traces.size(), history.cycles.size()); ++i)
    history.cycles[i].trace = traces[i];
}

}  // namespace rackside
