#pragma once
// Everything a plan of the whole collection stands on, read from the log as it stood at a moment.

#include <map>

#include "core/care/rule_book.hpp"
#include "core/climate/room_climate.hpp"
#include "core/collection/collection.hpp"
#include "core/forecast/forecast.hpp"
#include "core/log/log_store.hpp"

namespace rackside::program {

struct WholeLog {
  Collection collection;
  RuleBook rules;
  RoomClimate climate;
  std::map<AnimalId, Forecast> forecasts;  // of the living
};

/// Uses no event later than `until`; what is believed is told at `told_at`, as `forecast` tells it.
/// Errors: as LogStore::read_all.
[[nodiscard]] Result<WholeLog> read_whole_log(LogStore& log, Instant until, const Moment& told_at);

}  // namespace rackside::program
