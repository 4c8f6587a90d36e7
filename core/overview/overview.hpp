#pragma once
// Everything a screen or a plan of the whole collection stands on, read from the log in one pass
// that holds no more than one animal's events at a time.

#include <map>
#include <optional>

#include "core/care/rule_book.hpp"
#include "core/climate/air_days.hpp"
#include "core/climate/room_climate.hpp"
#include "core/climate/warm_days.hpp"
#include "core/collection/collection.hpp"
#include "core/cover/cover_book.hpp"
#include "core/forecast/forecast.hpp"
#include "core/log/log_store.hpp"
#include "core/overview/forecaster.hpp"
#include "core/people/people.hpp"
#include "core/round/round.hpp"

namespace rackside {

struct Overview {
  Collection collection;
  RuleBook rules;
  RoomClimate climate;
  AirDays air;  // of the days before
  WarmDays warmth;
  CoverBook cover;
  std::map<AnimalId, Forecast> forecasts;  // of the living
  std::optional<Round> last_round;         // at this log's kiosk, ended or not

  bool operator==(const Overview&) const = default;
};

/// What a kiosk must know before anything else.
struct Roster {
  Collection collection;  // who lives where, and no more
  People people;
  CoverBook cover;

  bool operator==(const Roster&) const = default;
};

/// Which events count.
enum class Until { AsOf, Everything };

/// The collection as it stands, or stood, at `as_of`; `forecaster` has then learnt it. With
/// Until::AsOf no event later than that counts, as for a plan of a day gone by; Until::Everything
/// also takes what a clock that was set back left in the future. Errors: as LogStore::read_all.
[[nodiscard]] Result<Overview> read_overview(LogStore& log, Forecaster& forecaster,
                                             const Moment& as_of, Until until);

/// Quick, for the first screen. Errors: as LogStore::read_kinds.
[[nodiscard]] Result<Roster> read_roster(LogStore& log);

}  // namespace rackside
