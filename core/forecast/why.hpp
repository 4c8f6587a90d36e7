#pragma once
// Which observations moved the belief, and by how much.

#include <vector>

#include "core/forecast/collection_model.hpp"
#include "core/forecast/forecast.hpp"

namespace rackside {

/// The few groups of observations without which the log odds of premoult would be most different,
/// the strongest first. Each weight is what the belief computed anew without them says.
[[nodiscard]] std::vector<Reason> reasons(const CollectionModel& model, const Evidence& evidence,
                                          const Character& character, const Belief& belief,
                                          double now);

}  // namespace rackside
