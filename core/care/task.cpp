#include "core/care/instruction.hpp"

namespace rackside {

std::string_view task_words(Task task) {
  switch (task) {
    case Task::GiveWater: return "Give water now";
    case Task::HelpWithMoult: return "Moult takes too long: get advice";
    case Task::RefusesAfterMoult: return "Look closer: refuses after its moult";
    case Task::TakePreyFromMoult: return "Take the prey out without touching it";
    case Task::TakeOutPrey: return "Take out the left prey";
    case Task::TakeOutShed: return "Take out the shed";
    case Task::MeasureFromShed: return "Measure or sex it from the shed";
    case Task::LookForShed: return "Look for a shed";
    case Task::LookCloser: return "Look closer";
    case Task::Offer: return "Offer";
    case Task::OfferOneSmall: return "Offer one small and watch";
    case Task::MistAndCheckWater: return "Mist and check the water";
    case Task::Reoffer: return "Offer again later";
    case Task::NotDue: return "Nothing today";
    case Task::Withhold: return "Offer nothing";
    case Task::LeaveAlone: return "Leave it entirely alone";
  }
  return {};
}

std::string_view task_name(Task task) {
  switch (task) {
    case Task::GiveWater: return "give water";
    case Task::HelpWithMoult: return "moult takes too long";
    case Task::RefusesAfterMoult: return "refuses after moult";
    case Task::TakePreyFromMoult: return "take prey from moult";
    case Task::TakeOutPrey: return "take out prey";
    case Task::TakeOutShed: return "take out shed";
    case Task::MeasureFromShed: return "measure from shed";
    case Task::LookForShed: return "look for shed";
    case Task::LookCloser: return "look closer";
    case Task::Offer: return "offer";
    case Task::OfferOneSmall: return "offer one small";
    case Task::MistAndCheckWater: return "mist and check water";
    case Task::Reoffer: return "offer again";
    case Task::NotDue: return "not due";
    case Task::Withhold: return "withhold";
    case Task::LeaveAlone: return "leave alone";
  }
  return {};
}

std::string_view urgency_word(Urgency urgency) {
  switch (urgency) {
    case Urgency::Due: return "due";
    case Urgency::Wait: return "wait";
    case Urgency::LeaveAlone: return "leave alone";
  }
  return {};
}

}  // namespace rackside
