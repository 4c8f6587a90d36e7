#pragma once
// A round that is under way, found again in the log after a restart.

#include <optional>

#include "core/log/log_store.hpp"
#include "core/overview/overview.hpp"
#include "core/round/day_plan.hpp"
#include "core/round/round.hpp"

namespace rackside {

/// What was planned when the round began, and what has been written since.
struct RoundSoFar {
  Round round;
  DayPlan plan;
  std::vector<Event> since;
  bool operator==(const RoundSoFar&) const = default;
};

/// The round at this log's kiosk that has not ended, if there is one: its plan is made anew from
/// the log as it was when the round began. Errors: as LogStore::read_all.
[[nodiscard]] Result<std::optional<RoundSoFar>> read_round(LogStore& log,
                                                           const Overview& overview);

}  // namespace rackside
