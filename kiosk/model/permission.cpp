#include "kiosk/model/permission.hpp"

#include <algorithm>

#include "core/cover/cover_rules.hpp"
#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

Guard guard_of_action(const Model& model, Action action) {
  if (action == Action::Died) return Guard::KeeperPin;
  if (action == Action::Undo && model.undo && model.undo->by != model.by) return Guard::KeeperPin;
  return Guard::Entry;
}

// Somebody else's, unless it is known to be one's own.
Guard guard_of_entry(const Model& model, EventId entry) {
  if (!model.tub || !model.tub->history) return Guard::KeeperPin;
  const auto found = std::ranges::find(*model.tub->history, entry, &Event::id);
  const bool own = found != model.tub->history->end() && found->by == model.by;
  return own ? Guard::Entry : Guard::KeeperPin;
}

Guard guard_of_correction(const Model& model) {
  return guard_of_entry(model, model.tub ? model.tub->corrected.value_or(EventId{}) : EventId{});
}

struct GuardOfQuestion {
  Guard operator()(const AskNewTub&) const { return Guard::Keepers; }
  Guard operator()(const AskPerson&) const { return Guard::KeeperPin; }
  Guard operator()(const AskWrong&) const { return Guard::Entry; }
  Guard operator()(const AskStandIn&) const { return Guard::KeeperPin; }
  Guard operator()(const AskContact&) const { return Guard::KeeperPin; }
  Guard operator()(const AskContactNumber&) const { return Guard::KeeperPin; }
  Guard operator()(const AskCoverNote&) const { return Guard::KeeperPin; }
  Guard operator()(const AskPrey&) const { return Guard::Entry; }
};

Guard guard_of_screen(const Model& model, ScreenName screen) {
  switch (screen) {
    case ScreenName::Round:
    case ScreenName::Carry:
    case ScreenName::Summary:
    case ScreenName::Tub:
    case ScreenName::Keypad:
    case ScreenName::Find:
    case ScreenName::Records:
    case ScreenName::Correct:
    case ScreenName::Drawer:
    case ScreenName::Map:
    case ScreenName::Weeks:
    case ScreenName::Air:
    case ScreenName::Growth:
    case ScreenName::Who:
    case ScreenName::Pin: return Guard::Open;
    case ScreenName::Picture:
    case ScreenName::Number: return Guard::Entry;
    case ScreenName::NewTubs: return Guard::Keepers;
    case ScreenName::Setup:
    case ScreenName::Camera:
    case ScreenName::BringIn:
    case ScreenName::People:
    case ScreenName::Person:
    case ScreenName::Cover:
    case ScreenName::NewCover:
    case ScreenName::Days:
    case ScreenName::Returned: return Guard::KeeperPin;
    case ScreenName::Words:
      return model.asking ? std::visit(GuardOfQuestion{}, model.asking->question) : Guard::Open;
  }
  return Guard::KeeperPin;
}

// Every intent is named here: a new one does not compile until somebody has said who may.
struct GuardOf {
  const Model& model;

  Guard here() const { return guard_of_screen(model, model.screen); }

  Guard operator()(const Record& i) const { return guard_of_action(model, i.action); }
  Guard operator()(const Show& i) const { return guard_of_screen(model, i.screen); }
  Guard operator()(const Close&) const { return Guard::Open; }
  Guard operator()(const OpenTub&) const { return Guard::Open; }
  Guard operator()(const OpenRack&) const { return Guard::Open; }
  Guard operator()(const LookFor&) const { return Guard::Open; }
  Guard operator()(const AskNumber&) const { return Guard::Entry; }
  Guard operator()(const TurnTiles&) const { return Guard::Open; }
  Guard operator()(const NextResident&) const { return Guard::Open; }
  Guard operator()(const Shift&) const { return here(); }
  Guard operator()(const Ask& i) const { return std::visit(GuardOfQuestion{}, i.question); }
  Guard operator()(const AnswerWith&) const { return here(); }
  Guard operator()(const Typed&) const { return here(); }
  Guard operator()(const Erase&) const { return here(); }
  Guard operator()(const Enter&) const { return here(); }
  Guard operator()(const Turn&) const { return Guard::Open; }
  Guard operator()(const TakeBack& i) const { return guard_of_entry(model, i.event); }
  Guard operator()(const LookAt&) const { return Guard::Open; }
  Guard operator()(const CorrectTo& i) const {
    return i.action == Action::Died ? Guard::KeeperPin : guard_of_correction(model);
  }
  Guard operator()(const CorrectDay&) const { return guard_of_correction(model); }
  Guard operator()(const NextFilter&) const { return Guard::Open; }
  Guard operator()(const SetOut&) const { return Guard::Entry; }
  Guard operator()(const EndRound&) const { return Guard::Entry; }
  Guard operator()(const NextValue&) const { return Guard::Keepers; }
  Guard operator()(const MakeTubs&) const { return Guard::Keepers; }
  Guard operator()(const SetUp&) const { return Guard::KeeperPin; }
  Guard operator()(const LookForCameras&) const { return Guard::KeeperPin; }
  Guard operator()(const LookForFiles&) const { return Guard::KeeperPin; }
  Guard operator()(const LookInto&) const { return Guard::KeeperPin; }
  Guard operator()(const BringIn&) const { return Guard::KeeperPin; }
  Guard operator()(const StopBringingIn&) const { return Guard::KeeperPin; }
  Guard operator()(const PrintBroughtIn&) const { return Guard::KeeperPin; }
  Guard operator()(const PickPerson&) const { return Guard::Open; }
  Guard operator()(const StepAside&) const { return Guard::Open; }
  Guard operator()(const OpenPerson&) const { return Guard::KeeperPin; }
  Guard operator()(const GiveAccess&) const { return Guard::KeeperPin; }
  Guard operator()(const EndAccess&) const { return Guard::KeeperPin; }
  Guard operator()(const ChangePin&) const { return Guard::KeeperPin; }
  Guard operator()(const PrintBadge&) const { return Guard::KeeperPin; }
  Guard operator()(const NextCover&) const { return Guard::KeeperPin; }
  Guard operator()(const AskDay&) const { return Guard::KeeperPin; }
  Guard operator()(const PickDay&) const { return Guard::KeeperPin; }
  Guard operator()(const ToggleRack&) const { return Guard::KeeperPin; }
  Guard operator()(const PlanCover&) const { return Guard::KeeperPin; }
  Guard operator()(const EndCover&) const { return Guard::KeeperPin; }
  Guard operator()(const PrintCover&) const { return Guard::KeeperPin; }
  Guard operator()(const TakePicture&) const { return Guard::Entry; }
  Guard operator()(const LeavePicture&) const { return Guard::Entry; }
  Guard operator()(const Leave&) const { return Guard::WayOut; }
  // A card says the same as its tile.
  Guard operator()(const CodeRead& i) const {
    const auto code = parse_code(i.text);
    const auto action = code ? action_from_code(*code) : std::nullopt;
    return action ? guard_of_action(model, *action) : Guard::Open;
  }
  Guard operator()(const LabelRefused&) const { return Guard::Open; }

  // What readers and workers bring is nobody's doing.
  Guard operator()(const ReaderSays&) const { return Guard::Open; }
  Guard operator()(const CameraSeen&) const { return Guard::Open; }
  Guard operator()(const CameraFitted&) const { return Guard::Open; }
  Guard operator()(const CoverForeseen&) const { return Guard::Open; }
  Guard operator()(const ReturnTold&) const { return Guard::Open; }
  Guard operator()(const CoverWorked&) const { return Guard::Open; }
  Guard operator()(const SheetPrinted&) const { return Guard::Open; }
  Guard operator()(const CamerasFound&) const { return Guard::Open; }
  Guard operator()(const RosterLoaded&) const { return Guard::Open; }
  Guard operator()(const OverviewReady&) const { return Guard::Open; }
  Guard operator()(const ForecastReady&) const { return Guard::Open; }
  Guard operator()(const HistoryLoaded&) const { return Guard::Open; }
  Guard operator()(const Saved&) const { return Guard::Open; }
  Guard operator()(const PinFound&) const { return Guard::Open; }
  Guard operator()(const PinChecked&) const { return Guard::Open; }
  Guard operator()(const PinKept&) const { return Guard::Open; }
  Guard operator()(const Stop&) const { return Guard::Open; }
  Guard operator()(const TubsMade&) const { return Guard::Open; }
  Guard operator()(const LabelsPrinted&) const { return Guard::Open; }
  Guard operator()(const PrintersFound&) const { return Guard::Open; }
  Guard operator()(const SettingsKept&) const { return Guard::Open; }
  Guard operator()(const FilesFound&) const { return Guard::Open; }
  Guard operator()(const FileLookedInto&) const { return Guard::Open; }
  Guard operator()(const PartBroughtIn&) const { return Guard::Open; }
  Guard operator()(const BroughtIn&) const { return Guard::Open; }
  Guard operator()(const Tick&) const { return Guard::Open; }
};

constexpr bool rows_follow_the_enumeration() {
  for (std::size_t i = 0; i < permissions.size(); ++i)
    if (static_cast<std::size_t>(permissions[i].guard) != i) return false;
  return true;
}
static_assert(rows_follow_the_enumeration());

}  // namespace

bool is_their_day(const Model& model, const Person& person) {
  const Day today = model.now.day();
  if (badge_state(person, today) != BadgeState::Open) return false;
  return person.role == Role::Keeper || not_your_days(model.cover, person, today).empty();
}

Standing standing_of(const Model& model) {
  // A PIN without people is one whose log is not read yet, or cannot be.
  if (model.people.nobody() && model.pin_set.value_or(false) && !model.roster_known)
    return model.pin_given ? Standing::Proven : Standing::Nobody;
  if (model.people.nobody()) return Standing::Unset;
  if (model.pin_given) return Standing::Proven;
  const Person* person = model.people.named(model.by);
  if (person == nullptr || !is_their_day(model, *person)) return Standing::Nobody;
  return person->role == Role::Keeper ? Standing::Keeper : Standing::Assistant;
}

bool stands_in(const Model& model) { return standing_of(model) == Standing::Assistant; }

Guard guard_of(const Model& model, const Intent& intent) {
  return std::visit(GuardOf{model}, intent);
}

Verdict permission(const Model& model, const Intent& intent) {
  const auto row = static_cast<std::size_t>(guard_of(model, intent));
  return permissions[row].verdicts[static_cast<std::size_t>(standing_of(model))];
}

std::string refusal(const Model& model, const Intent& intent) {
  return "Only a keeper does this: " + purpose(model, intent) +
         ". Nothing was changed. A keeper can scan their badge and go on.";
}

}  // namespace rackside::kiosk
