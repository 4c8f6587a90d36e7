#pragma once
// What follows from each deed, once it is allowed.

#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {

struct DeedStep {
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
    if (model.tub) model.tub->filter = next_filter(model.tub->filter);
    model.list_page = 0;
    return {};
  }
  Effects operator()(const SetOut&) const { return set_out(model, stamp); }
  Effects operator()(const EndRound&) const { return end_round(model, stamp); }
  Effects operator()(const SetUp& i) const { return set_up(model, i.settings); }
  Effects operator()(const LookForCameras&) const { return {FindCameras{}}; }
  Effects operator()(const LookForFiles&) const { return look_for_files(model); }
  Effects operator()(const LookInto& i) const { return look_into(model, i.file); }
  Effects operator()(const BringIn&) const { return bring_in(model); }
  Effects operator()(const StopBringingIn&) const { return {StopWriting{}}; }
  Effects operator()(const PrintBroughtIn&) const { return print_brought_in(model); }
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
  Effects operator()(const Leave&) const { return quit(model); }
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

 private:
  static RecordFilter next_filter(RecordFilter filter) {
    const bool last = filter == RecordFilter::Other;
    return last ? RecordFilter::All : static_cast<RecordFilter>(static_cast<int>(filter) + 1);
  }
  // Somebody is aiming the camera, or shows it a tub: what it reads opens nothing.
  bool only_tried(ReadBy by) const {
    return by == ReadBy::Camera &&
           (model.screen == ScreenName::Camera || model.screen == ScreenName::Picture);
  }
};

}  // namespace rackside::kiosk
