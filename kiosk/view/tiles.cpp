#include "kiosk/view/tiles.hpp"

#include <algorithm>

namespace rackside::kiosk {
namespace {

// What comes first in a phase; everything else follows in the order of the wall sheet.
std::vector<Action> completed(std::vector<Action> first) {
  for (const Action action : all_actions)
    if (action != Action::Undo && std::ranges::find(first, action) == first.end())
      first.push_back(action);
  return first;
}

}  // namespace

const std::vector<Action>& tile_order(Phase phase) {
  using enum Action;
  static const auto feeding = completed(
      {Took, Refused, LeftOvernight, Misted, WaterFilled, ShedFound, PreyRemoved, NothingUnusual});
  static const auto premoult = completed({NothingUnusual, ShedFound, DarkAbdomen, SealedIn, Misted,
                                          WaterFilled, OnItsBack, PreyRemoved, Refused, Took});
  static const auto moulting = completed(
      {ShedFound, OnItsBack, PreyRemoved, NothingUnusual, MoultSeen, Misted, WaterFilled});
  static const auto hardening = completed({NothingUnusual, WaterFilled, Misted, ShedRemoved, Took,
                                           Refused, PreyRemoved, LeftOvernight});
  switch (phase) {
    case Phase::Hardening: return hardening;
    case Phase::Feeding: return feeding;
    case Phase::Premoult: return premoult;
    case Phase::Moulting: return moulting;
    case Phase::Finished: return feeding;
  }
  return feeding;
}

const std::vector<Action>& likely_instead(RecordFilter kind) {
  using enum Action;
  static const std::vector<Action> meals{Took, Refused, LeftOvernight, PreyRemoved};
  static const std::vector<Action> moults{ShedFound, MoultSeen, ShedRemoved, OnItsBack};
  static const std::vector<Action> signs{NothingUnusual, DarkAbdomen, PlumpAbdomen,
                                         SealedIn,       Sluggish,    OnItsBack};
  static const std::vector<Action> care{Misted, WaterFilled};
  static const std::vector<Action> none;
  switch (kind) {
    case RecordFilter::Meals: return meals;
    case RecordFilter::Moults: return moults;
    case RecordFilter::Signs: return signs;
    case RecordFilter::Care: return care;
    case RecordFilter::All:
    case RecordFilter::Other: return none;
  }
  return none;
}

}  // namespace rackside::kiosk
