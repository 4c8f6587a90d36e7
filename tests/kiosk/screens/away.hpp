#pragma once
// The screens about somebody who stands in, with much to say.

#include "tests/kiosk/screens/collections.hpp"

namespace rackside::tests {

/// `list` and those.
[[nodiscard]] std::vector<Situation> with_away(std::vector<Situation> list);

}  // namespace rackside::tests
