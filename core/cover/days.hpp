#pragma once
// The days of an absence.

#include <vector>

#include "core/values/time.hpp"

namespace rackside {

/// `now` and the same hour on every day after it until `last`; at least `now`.
[[nodiscard]] std::vector<Moment> days_until(const Moment& now, Day last);

}  // namespace rackside
