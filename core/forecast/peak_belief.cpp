#include "core/forecast/peak_belief.hpp"

#include <algorithm>
#include <cmath>

namespace rackside {

PeakBelief peaks_given(const PeakWeights& log_likelihood, const PeakWeights& prior) {
  const double highest = *std::ranges::max_element(log_likelihood);
  PeakBelief posterior;
  double sum = 0;
  for (std::size_t peak = 0; peak < season_peaks; ++peak)
    sum += posterior.peaks[peak] = prior[peak] * std::exp(log_likelihood[peak] - highest);
  for (double& weight : posterior.peaks) weight /= sum;
  posterior.log_evidence = highest + std::log(sum);
  return posterior;
}

PeakWeights peaks_of_others(const std::map<std::string, PeakWeights>& species,
                            const std::string& but_for) {
  constexpr double on_its_own = 0.3;  // share of species that go by no other
  PeakWeights prior{};
  double others = 0;
  for (const auto& [name, peaks] : species) {
    if (name == but_for) continue;
    ++others;
    for (std::size_t peak = 0; peak < season_peaks; ++peak) prior[peak] += peaks[peak];
  }
  for (double& weight : prior)
    weight = others == 0 ? 1.0 / season_peaks
                         : on_its_own / season_peaks + (1 - on_its_own) * weight / others;
  return prior;
}

}  // namespace rackside
