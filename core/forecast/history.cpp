#include "core/forecast/history.hpp"

#include <algorithm>
#include <cmath>

#include "core/forecast/meals.hpp"

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

// Whether it matters where in its span a moult was, going by the cycle before it, or by the one
// after it where that is all there is.
bool is_wide(const std::vector<MoultSpan>& moults, std::size_t i, const GrowthClock& clock) {
  if (moults.size() < 2) return false;
  const std::size_t from = std::max<std::size_t>(1, i) - 1;
  const double cycle = clock.between(moults[from].middle(), moults[from + 1].middle());
  return clock.between(moults[i].earliest, moults[i].latest) > wide_span * cycle;
}

void begin_within(LoggedCycle& cycle, const MoultSpan& start, const GrowthClock& clock) {
  cycle.start_width = clock.between(start.earliest, start.latest);
  cycle.noise /= span_parts * span_parts;
}

LoggedCycle between(const std::vector<MoultSpan>& moults, std::size_t i, const GrowthClock& clock) {
  const MoultSpan& start = moults[i - 1];
  const MoultSpan& end = moults[i];
  const double from = start.middle();
  LoggedCycle cycle{.low = log_days(clock, from, std::max(end.earliest, from + 1)),
                    .high = log_days(clock, from, std::max(end.latest, from + 2)),
                    .noise = start_noise(start, end.middle()),
                    .wide_end = is_wide(moults, i, clock)};
  if (is_wide(moults, i - 1, clock)) begin_within(cycle, start, clock);
  return cycle;
}

}  // namespace

CycleHistory finished_cycles(const Evidence& evidence, const GrowthClock& clock) {
  CycleHistory history{evidence.stage, evidence.instar, {}};
  const std::vector<MealGaps> meals = meals_by_cycle(evidence, documented_priors().meals);
  const auto& moults = evidence.moults;
  history.cycles.reserve(moults.size() + 1);
  for (std::size_t i = 0; i < moults.size(); ++i) {
    if (i > 0)
      history.cycles.push_back(between(moults, i, clock));
    else
      history.cycles.push_back({.low = log_days(clock, evidence.arrived,
                                                std::max(evidence.arrived + 1, moults[0].middle())),
                                .start = LoggedCycle::Start::Arrival});
    history.cycles.back().meals = meals[i];
  }
  history.meals_since = meals.back();
  return history;
}

CycleHistory all_cycles(const Evidence& evidence, const GrowthClock& clock, double as_of) {
  CycleHistory history = finished_cycles(evidence, clock);
  if (evidence.moults.empty()) return history;
  const double until =
      std::min({as_of, evidence.ended.value_or(as_of), evidence.matured.value_or(as_of)});
  const MoultSpan& last = evidence.moults.back();
  if (until <= last.middle() + 1) return history;
  LoggedCycle running{.low = log_days(clock, last.middle(), until),
                      .noise = start_noise(last, until),
                      .running = true,
                      .meals = history.meals_since};
  if (is_wide(evidence.moults, evidence.moults.size() - 1, clock))
    begin_within(running, last, clock);
  history.cycles.push_back(running);
  return history;
}

}  // namespace rackside
