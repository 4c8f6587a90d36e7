#pragma once
// A hall of 2,000 tubs in all the states there are, for the screens that look at a collection.

#include "tests/kiosk/screens/collections.hpp"

namespace rackside::tests {

/// `list` and the situations in the hall.
[[nodiscard]] std::vector<Situation> with_hall(std::vector<Situation> list);

}  // namespace rackside::tests
