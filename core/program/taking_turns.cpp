#include "core/program/taking_turns.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <thread>

namespace rackside::program {
namespace {

Error interrupted(const Error& error, std::size_t written, std::size_t all) {
  return {error.kind,
          fmt::format("{} {} of {} events are in the log. Import the same files again: what is "
                      "there is passed over, and the rest follows.",
                      error.sentence, written, all),
          error.where};
}

}  // namespace

void let_others_write() { std::this_thread::sleep_for(std::chrono::milliseconds{120}); }

Result<void> append_in_turns(LogStore& log, const std::vector<Draft>& drafts, Instant now) {
  for (std::size_t begin = 0; begin < drafts.size(); begin += events_at_once) {
    if (begin > 0) let_others_write();
    const auto first = drafts.begin() + static_cast<std::ptrdiff_t>(begin);
    const auto count = std::min(events_at_once, drafts.size() - begin);
    const auto written = log.append({first, first + static_cast<std::ptrdiff_t>(count)}, now);
    if (written) continue;
    if (begin == 0) return tl::unexpected(written.error());
    return tl::unexpected(interrupted(written.error(), begin, drafts.size()));
  }
  return {};
}

}  // namespace rackside::program
