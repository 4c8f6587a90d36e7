#pragma once
// Which observations moved the belief, and by how much.

#include <vector>

#include "core/forecast/collection_model.hpp"
#include "core/forecast/forecast.hpp"

namespace rackside {

/// The few groups of observations without which the log odds of premoult would be most different,
/// the strongest first. Each weight is how far the belief moves when it is computed anew without
/// them; for the last moult, when it is computed as though its day were not known.
[[nodiscard]] std::vector<Reason> reasons(const Evidence& evidence, const Character& character,
                                          const Belief& belief, double now);

/// ln(p / (1 - p)), held within what can be told from certainty.
[[nodiscard]] double log_odds(double p);

}  // namespace rackside
