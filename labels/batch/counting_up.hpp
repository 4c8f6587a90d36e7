#pragma once
// Positions and names that count: "14" is followed by "15", "A09" by "A10".

#include <string>
#include <string_view>

#include "core/values/result.hpp"

namespace rackside {

/// `text` with the number at its end raised by `steps`, as wide as it was where that suffices.
/// Errors: BadInput when it does not end in a number.
[[nodiscard]] Result<std::string> counted_up(std::string_view text, int steps);

/// The number at the end of `text` when all before it is `prefix`; 0 when it is not.
[[nodiscard]] int number_after(std::string_view prefix, std::string_view text);

}  // namespace rackside
