#pragma once
// Where tubs stand, and the order in which a person walks past them.

#include <string>
#include <string_view>

#include "core/event/details.hpp"

namespace rackside {

/// Numbers inside the texts compare as numbers ("shelf 2" before "shelf 10"); letters compare
/// without regard to case.
[[nodiscard]] bool natural_before(std::string_view a, std::string_view b);

/// Rack, then shelf, then position. Unknown places come last.
[[nodiscard]] bool walks_before(const Place& a, const Place& b);

/// "rack A, shelf 2, position 14"; parts that are unknown are left out.
[[nodiscard]] std::string format_place(const Place& place);

}  // namespace rackside
