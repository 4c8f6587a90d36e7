#pragma once
// What turned out, as far as the log can tell.

#include <optional>

#include "core/forecast/evidence.hpp"

namespace rackside {

/// The first moult on record that was found after wall day `day`; none when none was yet.
[[nodiscard]] std::optional<MoultSpan> next_on_record(const Evidence& animal, double day);

/// Whether the animal was in premoult on `day`, told from how the cycle ended: from the offer on
/// from which meals were no longer taken (the split of the cycle's offers that the fewest of them
/// speak against) until the moult. None where the cycle's end is not on record, nothing was offered
/// near its end, or the day lies between the two offers at the split.
[[nodiscard]] std::optional<bool> was_in_premoult(const Evidence& animal, double day);

/// Days before a moult, and after it, in which a meal is a danger: the animal cannot defend itself.
inline constexpr double danger_days = 7;  // common practice, no source

/// Whether a meal on `day` would have fallen into the danger window of a moult on record.
[[nodiscard]] bool was_dangerous(const Evidence& animal, double day);

}  // namespace rackside
