#pragma once
// Everything the lists need, read from the log in one pass: who lives where and how each is, the
// rules, the air, and a forecast for every living animal.

#include "core/log/log_store.hpp"
#include "kiosk/model/intent.hpp"
#include "kiosk/shell/forecaster.hpp"

namespace rackside::kiosk {

/// Reads `log` animal by animal; holds no more than one animal's events at a time. `forecaster`
/// has then learnt the whole collection as it stood at `as_of`.
[[nodiscard]] Result<OverviewReady> read_overview(LogStore& log, Forecaster& forecaster,
                                                  const Moment& as_of);

/// The round that is under way at this log's kiosk, if there is one: its plan made anew from the
/// log as it was when the round began.
[[nodiscard]] Result<std::optional<RoundSoFar>> read_round(LogStore& log,
                                                           const OverviewReady& overview);

[[nodiscard]] Result<Collection> read_roster(LogStore& log);

}  // namespace rackside::kiosk
