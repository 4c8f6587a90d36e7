#include <utility>

#include "kiosk/model/permission.hpp"
#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

bool is_about_cover(ScreenName screen) {
  return screen == ScreenName::Cover || screen == ScreenName::NewCover ||
         screen == ScreenName::Days || screen == ScreenName::Returned;
}

struct PurposeOfQuestion {
  std::string operator()(const AskNewTub&) const { return "new tubs"; }
  std::string operator()(const AskPerson&) const { return "people"; }
  std::string operator()(const AskWrong&) const { return "recording"; }
  std::string operator()(const AskPrey&) const { return "the round"; }
  std::string operator()(const AskStandIn&) const { return "cover"; }
  std::string operator()(const AskContact&) const { return "cover"; }
  std::string operator()(const AskContactNumber&) const { return "cover"; }
  std::string operator()(const AskCoverNote&) const { return "cover"; }
};

struct Purpose {
  const Model& model;

  std::string operator()(const Record& i) const {
    if (i.action == Action::Died) return "recording a death";
    return i.action == Action::Undo ? "taking back somebody else's entry" : "recording";
  }
  std::string operator()(const CodeRead& i) const {
    const auto code = parse_code(i.text);
    const auto action = code ? action_from_code(*code) : std::nullopt;
    return action ? (*this)(Record{*action}) : "what was scanned";
  }
  std::string operator()(const Show& i) const {
    if (i.screen == ScreenName::Setup || i.screen == ScreenName::Camera) return "setup";
    if (is_about_cover(i.screen)) return "cover";
    if (i.screen == ScreenName::Picture) return "recording";
    if (i.screen == ScreenName::BringIn) return "bringing records in";
    return i.screen == ScreenName::NewTubs ? "new tubs" : "people";
  }
  std::string operator()(const PrintBadge&) const { return "people"; }
  std::string operator()(const NextCover&) const { return "cover"; }
  std::string operator()(const AskDay&) const { return "cover"; }
  std::string operator()(const PickDay&) const { return "cover"; }
  std::string operator()(const ToggleRack&) const { return "cover"; }
  std::string operator()(const PlanCover&) const { return "cover"; }
  std::string operator()(const EndCover&) const { return "cover"; }
  std::string operator()(const PrintCover&) const { return "cover"; }
  std::string operator()(const TakePicture&) const { return "recording"; }
  std::string operator()(const LeavePicture&) const { return "recording"; }
  std::string operator()(const CorrectTo& i) const {
    if (i.action == Action::Died) return "recording a death";
    return "putting somebody else's entry right";
  }
  std::string operator()(const CorrectDay&) const { return "putting somebody else's entry right"; }
  std::string operator()(const TakeBack&) const { return "taking back somebody else's entry"; }
  std::string operator()(const LookForCameras&) const { return "setup"; }
  std::string operator()(const SetUp&) const { return "setup"; }
  std::string operator()(const MakeTubs&) const { return "new tubs"; }
  std::string operator()(const NextValue&) const { return "new tubs"; }
  std::string operator()(const Ask& i) const { return std::visit(PurposeOfQuestion{}, i.question); }
  std::string operator()(const OpenPerson&) const { return "people"; }
  std::string operator()(const GiveAccess&) const { return "people"; }
  std::string operator()(const EndAccess&) const { return "people"; }
  std::string operator()(const ChangePin&) const { return "another PIN"; }
  std::string operator()(const SetOut&) const { return "the round"; }
  std::string operator()(const EndRound&) const { return "the round"; }
  std::string operator()(const Leave&) const { return "leaving the program"; }

  // Keys on a screen are for what the screen is for.
  template <class Other>
  std::string operator()(const Other&) const {
    if (model.screen != ScreenName::Words || !model.asking) return (*this)(Show{model.screen});
    return (*this)(Ask{model.asking->question});
  }
};

}  // namespace

Effects ask_who(Model& model, const Intent& wanted) {
  model.wanted = wanted;
  go_to(model, ScreenName::Who);
  return {};
}

Effects ask_pin(Model& model, const Intent& wanted) {
  if (model.pin_set == false && standing_of(model) != Standing::Keeper) {
    tell(model, Tone::Problem,
         "No PIN is set here. A keeper scans their badge and sets one first.");
    return {};
  }
  model.wanted = wanted;
  if (model.pin_set == false) return choose_pin(model);
  model.pin = PinPage{};
  go_to(model, ScreenName::Pin);
  return {};
}

Effects go_on(Model& model, const Stamp& stamp) {
  const auto wanted = std::exchange(model.wanted, std::nullopt);
  model.pin.reset();
  go_back(model);
  return wanted ? decide(model, *wanted, stamp) : Effects{};
}

std::string purpose(const Model& model, const Intent& wanted) {
  return std::visit(Purpose{model}, wanted);
}

}  // namespace rackside::kiosk
