#pragma once
// What is to be done in the whole collection on one day, in walking order. Pure.

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/care/condition.hpp"
#include "core/care/instruction.hpp"
#include "core/care/rule_book.hpp"
#include "core/climate/room_climate.hpp"
#include "core/collection/collection.hpp"

namespace rackside {

/// One animal's line in the plan.
struct TubTask {
  AnimalId animal;
  std::optional<Code> enclosure;
  Place place;
  Condition condition = Condition::Feeding;
  std::string state;  // how it is, in one sentence
  Instruction instruction;

  bool operator==(const TubTask&) const = default;
};

/// Walking order; where two stand in the same place, by code and then by animal, so that there is
/// one order only.
[[nodiscard]] bool comes_before(const TubTask& a, const TubTask& b);

/// Something about a whole rack.
struct RackNote {
  std::string rack;  // empty is the room
  std::string sentence;
  bool operator==(const RackNote&) const = default;
};

/// Every living animal of the collection stands in exactly one of the three lists, each of them in
/// walking order.
struct DayPlan {
  Moment made;
  std::vector<TubTask> due;
  std::vector<TubTask> wait;
  std::vector<TubTask> leave_alone;
  std::vector<RackNote> notes;

  bool operator==(const DayPlan&) const = default;
};

/// `forecasts` may lack animals (not computed yet). `rack` empty is every rack.
[[nodiscard]] DayPlan plan_day(const Collection& collection,
                               const std::map<AnimalId, Forecast>& forecasts, const RuleBook& rules,
                               const RoomClimate& climate, Moment now, std::string_view rack = {});

/// Part of a list in walking order that stands on one shelf.
struct ShelfPart {
  Place shelf;  // without a position
  std::span<const TubTask> tubs;
};
[[nodiscard]] std::vector<ShelfPart> by_shelf(std::span<const TubTask> tubs);

}  // namespace rackside
