#include "kiosk/model/update.hpp"

#include "kiosk/model/permission.hpp"
#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

RecordFilter after(RecordFilter filter) {
  const bool last = filter == RecordFilter::Other;
  return last ? RecordFilter::All : static_cast<RecordFilter>(static_cast<int>(filter) + 1);
}

struct Step {
  Model& model;
  const Stamp& stamp;

  Effects operator()(const Record& i) const { return record(model, i.action, stamp); }
  Effects operator()(const Show& i) const {
    if (i.screen == ScreenName::Cover) return open_cover(model);
    if (i.screen == ScreenName::Returned) return open_return(model);
    if (i.screen == ScreenName::Map)
      show_map(model);
    else
      go_to(model, i.screen);
    if (i.screen == ScreenName::Setup) return {FindPrinters{}};
    if (i.screen == ScreenName::BringIn) return look_for_files(model);
    return {};
  }
  Effects operator()(const OpenRack& i) const {
    open_rack(model, i);
    return {};
  }
  Effects operator()(const LookFor& i) const {
    model.find_words = i.words;
    go_to(model, ScreenName::Find);
    return {};
  }
  Effects operator()(const AskNumber& i) const {
    ask_number(model, i.question);
    return {};
  }
  Effects operator()(const Close&) const {
    go_back(model);
    return {};
  }
  Effects operator()(const OpenTub& i) const { return open_tub(model, i.code); }
  Effects operator()(const TurnTiles&) const {
    if (model.tub) ++model.tub->tile_page;
    return {};
  }
  Effects operator()(const NextResident&) const {
    return model.tub ? show_resident(model, model.tub->shown + 1) : Effects{};
  }
  Effects operator()(const Shift&) const {
    if (model.asking) model.asking->capital = !model.asking->capital;
    return {};
  }
  Effects operator()(const Ask& i) const {
    ask(model, i.question);
    return {};
  }
  Effects operator()(const AnswerWith& i) const {
    if (!model.asking) return {};
    model.asking->text = i.text;
    return answer(model, stamp);
  }
  Effects operator()(const NextValue& i) const {
    next_value(model, i.field);
    return {};
  }
  Effects operator()(const MakeTubs&) const { return make_tubs(model); }
  Effects operator()(const TubsMade& i) const { return on_tubs_made(model, i); }
  Effects operator()(const LabelsPrinted& i) const {
    if (i.outcome)
      tell(model, Tone::Done, *i.outcome);
    else
      tell(model, Tone::Problem, i.outcome.error().sentence);
    return {};
  }
  Effects operator()(const Typed& i) const { return on_typed(model, i.character, stamp); }
  Effects operator()(const Erase&) const {
    on_erase(model);
    return {};
  }
  Effects operator()(const Enter&) const { return on_enter(model, stamp); }
  Effects operator()(const Turn& i) const {
    model.list_page = std::max(0, i.page);
    model.list_turned = true;
    return {};
  }
  Effects operator()(const TakeBack& i) const { return take_back(model, i.event, stamp); }
  Effects operator()(const LookAt& i) const {
    look_at(model, i.event);
    return {};
  }
  Effects operator()(const CorrectTo& i) const { return correct_to(model, i.action, stamp); }
  Effects operator()(const CorrectDay& i) const { return correct_day(model, i.later, stamp); }
  Effects operator()(const NextFilter&) const {
    if (model.tub) model.tub->filter = after(model.tub->filter);
    model.list_page = 0;
    return {};
  }
  Effects operator()(const SetOut&) const { return set_out(model, stamp); }
  Effects operator()(const EndRound&) const { return end_round(model, stamp); }
  Effects operator()(const SetUp& i) const { return set_up(model, i.settings); }
  Effects operator()(const LookForCameras&) const { return {FindCameras{}}; }
  Effects operator()(const LookForFiles&) const { return look_for_files(model); }
  Effects operator()(const LookInto& i) const { return look_into(model, i.path); }
  Effects operator()(const BringIn&) const { return bring_in(model); }
  Effects operator()(const StopBringingIn&) const { return {StopWriting{}}; }
  Effects operator()(const PrintBroughtIn&) const { return print_brought_in(model); }
  Effects operator()(const FilesFound& i) const {
    model.bring_in.files = i.files;
    return {};
  }
  Effects operator()(const FileLookedInto& i) const {
    on_looked_into(model, i);
    return {};
  }
  Effects operator()(const PartBroughtIn& i) const {
    model.bring_in.so_far = i.so_far;
    return {};
  }
  Effects operator()(const BroughtIn& i) const { return on_brought_in(model, i); }
  Effects operator()(const PickPerson& i) const { return pick_person(model, i.name, stamp); }
  Effects operator()(const StepAside&) const {
    step_aside(model);
    go_home(model);
    return {};
  }
  Effects operator()(const OpenPerson& i) const {
    open_person(model, i.name);
    return {};
  }
  Effects operator()(const GiveAccess&) const { return give_access(model, stamp); }
  Effects operator()(const EndAccess&) const { return end_access(model, stamp); }
  Effects operator()(const ChangePin&) const { return choose_pin(model); }
  Effects operator()(const PrintBadge&) const { return print_badge(model); }
  Effects operator()(const NextCover&) const { return next_cover(model); }
  Effects operator()(const AskDay& i) const {
    ask_day(model, i.which);
    return {};
  }
  Effects operator()(const PickDay& i) const {
    pick_day(model, i.day);
    return {};
  }
  Effects operator()(const ToggleRack& i) const {
    toggle_rack(model, i.rack);
    return {};
  }
  Effects operator()(const PlanCover&) const { return plan_cover(model, stamp); }
  Effects operator()(const EndCover&) const { return end_cover(model, stamp); }
  Effects operator()(const PrintCover&) const { return print_cover(model); }
  Effects operator()(const TakePicture&) const { return take_picture(model); }
  Effects operator()(const LeavePicture&) const { return leave_picture(model); }
  Effects operator()(const CoverForeseen& i) const {
    on_cover_foreseen(model, i);
    return {};
  }
  Effects operator()(const ReturnTold& i) const {
    on_return_told(model, i);
    return {};
  }
  Effects operator()(const CoverWorked& i) const {
    on_cover_worked(model, i);
    return {};
  }
  Effects operator()(const SheetPrinted& i) const {
    on_sheet_printed(model, i);
    return {};
  }
  Effects operator()(const CameraFitted& i) const {
    model.camera_fitted = i.fitted;
    return {};
  }
  Effects operator()(const Leave&) const { return quit(); }
  Effects operator()(const Stop&) const { return quit(); }
  Effects operator()(const PinFound& i) const {
    on_pin_found(model, i);
    return {};
  }
  Effects operator()(const PinChecked& i) const { return on_pin_checked(model, i, stamp); }
  Effects operator()(const PinKept& i) const { return on_pin_kept(model, i, stamp); }
  Effects operator()(const CodeRead& i) const {
    if (only_tried(i.by)) return {};
    Effects effects = on_code(model, i.text, stamp);
    if (i.our_codes > 1 && !model.notice)
      tell(model, Tone::Tell, "Several labels in view: this is the one nearest to the middle.");
    return effects;
  }
  Effects operator()(const LabelRefused& i) const {
    if (!only_tried(ReadBy::Camera)) tell(model, Tone::Problem, i.sentence);
    return {};
  }
  Effects operator()(const ReaderSays& i) const {
    model.reader_says = i.sentence;
    return {};
  }
  Effects operator()(const CameraSeen& i) const {
    on_sight(model, i.sight);
    return {};
  }
  Effects operator()(const CamerasFound& i) const {
    on_cameras(model, i);
    return {};
  }
  Effects operator()(const RosterLoaded& i) const { return on_roster(model, i, stamp); }
  Effects operator()(const OverviewReady& i) const {
    on_overview(model, i);
    return {};
  }
  Effects operator()(const ForecastReady& i) const {
    model.forecasts.insert_or_assign(i.forecast.animal, i.forecast);
    if (model.tub && model.tub->animal == i.forecast.animal) model.tub->density = i.density;
    return {};
  }
  Effects operator()(const HistoryLoaded& i) const { return on_history(model, i, stamp); }
  Effects operator()(const Saved& i) const { return on_saved(model, i, stamp); }
  Effects operator()(const PrintersFound& i) const {
    model.printers = i;
    return {};
  }
  Effects operator()(const SettingsKept& i) const {
    if (i.problem) tell(model, Tone::Problem, i.problem->sentence);
    return {};
  }
  Effects operator()(const Tick&) const { return when_idle(); }

 private:
  Effects quit() const {
    Effects effects = leave_picture(model);
    effects.emplace_back(Quit{});
    return effects;
  }
  // Somebody is aiming the camera, or shows it a tub: what it reads opens nothing.
  bool only_tried(ReadBy by) const {
    return by == ReadBy::Camera &&
           (model.screen == ScreenName::Camera || model.screen == ScreenName::Picture);
  }
  Effects when_idle() const {
    const bool idle = model.last_touched && stamp.now.utc - model.last_touched->utc >= idle_return;
    if (!idle) return {};
    model.last_touched.reset();
    go_home(model);
    model.undo.reset();
    model.pin_given.reset();
    // A new day changes forecasts and what is due, also when nothing was recorded; and another
    // program may have written since.
    return {TidyLog{}, LoadRoster{}, LoadOverview{}};
  }
};

bool by_a_person(const Intent& intent) {
  return !(
      std::holds_alternative<RosterLoaded>(intent) ||
      std::holds_alternative<OverviewReady>(intent) ||
      std::holds_alternative<ForecastReady>(intent) ||
      std::holds_alternative<HistoryLoaded>(intent) || std::holds_alternative<Saved>(intent) ||
      std::holds_alternative<PinFound>(intent) || std::holds_alternative<PinChecked>(intent) ||
      std::holds_alternative<PinKept>(intent) || std::holds_alternative<Stop>(intent) ||
      std::holds_alternative<ReaderSays>(intent) || std::holds_alternative<SettingsKept>(intent) ||
      std::holds_alternative<TubsMade>(intent) || std::holds_alternative<PrintersFound>(intent) ||
      std::holds_alternative<LabelsPrinted>(intent) || std::holds_alternative<CameraSeen>(intent) ||
      std::holds_alternative<CamerasFound>(intent) || std::holds_alternative<FilesFound>(intent) ||
      std::holds_alternative<FileLookedInto>(intent) ||
      std::holds_alternative<PartBroughtIn>(intent) || std::holds_alternative<BroughtIn>(intent) ||
      std::holds_alternative<CameraFitted>(intent) ||
      std::holds_alternative<CoverForeseen>(intent) || std::holds_alternative<ReturnTold>(intent) ||
      std::holds_alternative<CoverWorked>(intent) || std::holds_alternative<SheetPrinted>(intent) ||
      std::holds_alternative<Tick>(intent));
}

}  // namespace

Effects decide(Model& model, const Intent& intent, const Stamp& stamp) {
  switch (permission(model, intent)) {
    case Verdict::Allowed: return std::visit(Step{model, stamp}, intent);
    case Verdict::AskWho: return ask_who(model, intent);
    case Verdict::AskPin: return ask_pin(model, intent);
    case Verdict::Refused: tell(model, Tone::Problem, refusal(model, intent)); return {};
  }
  return {};
}

Next update(Model model, const Intent& intent, const Stamp& stamp) {
  model.now = stamp.now;
  if (by_a_person(intent)) {
    note_presence(model, stamp);
    model.last_touched = stamp.now;
  }
  const ScreenName before = model.screen;
  Effects effects = decide(model, intent, stamp);
  for (Effect& effect : follow_screen(model, before)) effects.push_back(std::move(effect));
  // However the question about a picture was left, what is wrong is recorded.
  if (model.flagging && model.screen != ScreenName::Picture)
    for (Effect& effect : leave_picture(model)) effects.push_back(std::move(effect));
  if (!asks_first(model.screen)) {
    // Nobody waits for an answer any more.
    model.pin.reset();
    model.wanted.reset();
    model.new_person.reset();
  }
  return {std::move(model), std::move(effects)};
}

Next begin(std::string by, Moment now, Settings settings) {
  Model model;
  model.by = std::move(by);
  model.now = now;
  take_settings(model, std::move(settings));
  return {std::move(model), {FindPin{}, LoadRoster{}, LoadOverview{}}};
}

}  // namespace rackside::kiosk
