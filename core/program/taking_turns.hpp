#pragma once
// Long writing in pieces, between which a kiosk on the same log can save what was tapped.

#include <vector>

#include "core/log/log_store.hpp"

namespace rackside::program {

/// Events to a piece: less than half a second on a small computer, where a kiosk waits for two.
inline constexpr std::size_t events_at_once = 4000;

/// To be called between two pieces. One that waits for SQLite tries again every tenth of a second
/// at least, and would seldom hit a shorter gap.
void let_others_write();

/// Appends `drafts` piece by piece. Errors: as LogStore::append; when some pieces were written
/// before, the sentence says how much and that the rest can follow.
[[nodiscard]] Result<void> append_in_turns(LogStore& log, const std::vector<Draft>& drafts,
                                           Instant now);

}  // namespace rackside::program
