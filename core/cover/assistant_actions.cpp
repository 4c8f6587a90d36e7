#include "core/cover/assistant_actions.hpp"

namespace rackside {

std::vector<Action> assistant_actions(const Instruction& said) {
  using enum Action;
  switch (said.task) {
    case Task::Offer:
    case Task::OfferOneSmall: return {Took, Refused, LeftOvernight, ShedFound};
    case Task::TakeOutPrey: return {PreyRemoved, Took, OnItsBack};
    case Task::TakePreyFromMoult: return {PreyRemoved, ShedFound};
    case Task::TakeOutShed: return {ShedRemoved, NothingUnusual, WaterFilled};
    case Task::MistAndCheckWater: return {Misted, WaterFilled, ShedFound, OnItsBack};
    case Task::GiveWater: return {WaterFilled, NothingUnusual};
    case Task::LookForShed:
    case Task::LookCloser: return {NothingUnusual, ShedFound, OnItsBack, WaterFilled};
    case Task::RefusesAfterMoult:
    case Task::HelpWithMoult:
    case Task::LeaveAlone: return {NothingUnusual, OnItsBack, ShedFound};
    case Task::Withhold:
    case Task::NotDue:
    case Task::Reoffer:
    case Task::MeasureFromShed: return {NothingUnusual, ShedFound, OnItsBack, WaterFilled};
  }
  return {};
}

}  // namespace rackside
