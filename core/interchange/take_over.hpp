#pragma once
// A planned import into the log, in parts: whoever else writes to the log comes in between them,
// so that a tap at a kiosk does not wait for half a million rows. Every row was looked at before;
// when the parts are stopped half-way, what is written stays, and the same files imported again
// go on behind it, because rows that are in the log are passed over.

#include <functional>

#include "core/interchange/import.hpp"

namespace rackside {

inline constexpr std::size_t import_part = 2000;  // drafts, some tens of milliseconds

/// Writes the next part of `plan`, from the draft `done` on; gives how many are written then.
/// Errors: as LogStore::append.
[[nodiscard]] Result<std::size_t> take_over_part(const ImportPlan& plan, std::size_t done,
                                                 LogStore& log, Clock& clock);

/// Writes all of it. `between` is called after each part with how many are written.
[[nodiscard]] Result<void> take_over(const ImportPlan& plan, LogStore& log, Clock& clock,
                                     const std::function<void(std::size_t)>& between);

}  // namespace rackside
