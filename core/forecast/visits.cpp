#include "core/forecast/visits.hpp"

#include <algorithm>

namespace rackside {
namespace {

constexpr double cold_below = 19;  // degrees C; from memory

double earliest_of(const std::vector<double>& visits, double found, double before) {
  // The look at which it was found is often written beside it, on the same day.
  const auto after = std::ranges::lower_bound(visits, found - 0.75);
  const double visit = after == visits.begin() ? before : *(after - 1);
  return std::min(std::max(visit, before), found - 0.25);
}

}  // namespace

void settle_visits(Evidence& evidence, const std::vector<double>& looks,
                   const std::vector<VisitWithFood>& offers) {
  evidence.visits = looks;
  const bool offers_are_visits = looks.size() * 4 < offers.size();
  for (const VisitWithFood& offer : offers)
    if (offers_are_visits || offer.took) evidence.visits.push_back(offer.day);
  for (Observation& o : evidence.observations)
    o.visit = o.kind == Observation::Kind::Look || offers_are_visits || o.outcome == Outcome::Took;
  std::ranges::sort(evidence.visits);
  double before = evidence.arrived;
  for (MoultSpan& moult : evidence.moults) {
    if (moult.width() <= 0) moult.earliest = earliest_of(evidence.visits, moult.latest, before);
    before = moult.latest;
  }
}

void mark_cold(Evidence& evidence) {
  if (evidence.warmth.empty()) return;
  for (Observation& observation : evidence.observations) {
    const auto next = std::ranges::upper_bound(evidence.warmth, static_cast<float>(observation.day),
                                               {}, &WeekOfWarmth::day);
    if (next == evidence.warmth.begin()) continue;
    const WeekOfWarmth& week = *(next - 1);
    if (observation.day - week.day < 21 && week.celsius < cold_below) observation.unsettled = true;
  }
}

}  // namespace rackside
