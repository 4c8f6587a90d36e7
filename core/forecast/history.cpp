#include "core/forecast/history.hpp"

#include <algorithm>
#include <cmath>

namespace rackside {
namespace {

double log_days(const GrowthClock& clock, double from, double to) {
  return std::log(std::max(0.5, clock.between(from, to)));
}

// Variance that the width of the first moult adds to the log of the length (delta method).
double start_noise(const MoultSpan& start, double end) {
  const double share = start.width() / std::max(1.0, end - start.middle());
  return std::min(0.25, share * share / 12);
}

LoggedCycle between(const MoultSpan& start, const MoultSpan& end, const GrowthClock& clock) {
  const double from = start.middle();
  return {.low = log_days(clock, from, std::max(end.earliest, from + 1)),
          .high = log_days(clock, from, std::max(end.latest, from + 2)),
          .noise = start_noise(start, end.middle())};
}

}  // namespace

CycleHistory finished_cycles(const Evidence& evidence, const GrowthClock& clock) {
  CycleHistory history{evidence.stage, evidence.instar, {}};
  const auto& moults = evidence.moults;
  history.cycles.reserve(moults.size() + 1);
  for (std::size_t i = 0; i < moults.size(); ++i) {
    if (i > 0)
      history.cycles.push_back(between(moults[i - 1], moults[i], clock));
    else
      history.cycles.push_back({.low = log_days(clock, evidence.arrived,
                                                std::max(evidence.arrived + 1, moults[0].middle())),
                                .start = LoggedCycle::Start::Arrival});
  }
  return history;
}

CycleHistory all_cycles(const Evidence& evidence, const GrowthClock& clock, double as_of) {
  CycleHistory history = finished_cycles(evidence, clock);
  if (evidence.moults.empty()) return history;
  const double until =
      std::min({as_of, evidence.ended.value_or(as_of), evidence.matured.value_or(as_of)});
  const MoultSpan& last = evidence.moults.back();
  if (until > last.middle() + 1)
    history.cycles.push_back({.low = log_days(clock, last.middle(), until),
                              .noise = start_noise(last, until),
                              .running = true});
  return history;
}

}  // namespace rackside
