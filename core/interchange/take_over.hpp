#pragma once
// A planned import into the log, in parts: whoever else writes to the log comes in between them,
// so that a tap at a kiosk does not wait for half a million rows. Every row was looked at before;
// when the parts are stopped half-way, what is written stays, and the same files imported again
// go on behind it, because rows that are in the log are passed over.

#include <functional>

#include <string>

#include "core/interchange/import.hpp"

namespace rackside {

inline constexpr std::size_t import_part = 2000;  // drafts, some tens of milliseconds

/// How far the log has come, in drafts.
struct WrittenSoFar {
  std::size_t written = 0;
  std::size_t of = 0;
  bool operator==(const WrittenSoFar&) const = default;
};

/// "10 of 23 entries are in the log; the same brought in again goes on there."
[[nodiscard]] std::string so_far_words(const WrittenSoFar& so_far);
/// What is told when `problem` kept an import from its end: where it is in a file, if it is, and
/// what is in the log all the same, because the sentence of `problem` knows of its own part only.
[[nodiscard]] std::string held_up_words(const Error& problem, const WrittenSoFar& so_far);

/// Writes the next part of `plan`, from the draft `done` on; gives how many are written then.
/// Errors: as LogStore::append.
[[nodiscard]] Result<std::size_t> take_over_part(const ImportPlan& plan, std::size_t done,
                                                 LogStore& log, Clock& clock);

/// Writes all of it. `between` is called after each part with how many are written.
/// Errors: as LogStore::append, with held_up_words as the sentence.
[[nodiscard]] Result<void> take_over(const ImportPlan& plan, LogStore& log, Clock& clock,
                                     const std::function<void(std::size_t)>& between);

}  // namespace rackside
