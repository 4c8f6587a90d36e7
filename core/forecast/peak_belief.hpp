#pragma once
// What is believed of the time of the year at which a species' moults peak.

#include <map>
#include <string>

#include "core/forecast/season.hpp"

namespace rackside {

struct PeakBelief {
  PeakWeights peaks{};
  double log_evidence = 0;  // of what the belief was formed by
};

/// Bayes' rule: `log_likelihood` for each peak, `prior` with sum 1.
[[nodiscard]] PeakBelief peaks_given(const PeakWeights& log_likelihood, const PeakWeights& prior);

/// Where a species' peak may be, going by those of `species` but for this one. Not by its own: what
/// is believed of it would be evidence for itself.
[[nodiscard]] PeakWeights peaks_of_others(const std::map<std::string, PeakWeights>& species,
                                          const std::string& but_for);

}  // namespace rackside
