#pragma once
// What follows from each piece of news.

#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {

struct NewsStep {
  Model& model;
  const Stamp& stamp;

  Effects operator()(const TubsMade& i) const { return on_tubs_made(model, i); }
  Effects operator()(const LabelsPrinted& i) const {
    if (i.outcome)
      tell(model, Tone::Done, *i.outcome);
    else
      tell(model, Tone::Problem, i.outcome.error().sentence);
    return {};
  }
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
  Effects operator()(const Stop&) const { return quit(model); }
  Effects operator()(const PinFound& i) const {
    on_pin_found(model, i);
    return {};
  }
  Effects operator()(const PinChecked& i) const { return on_pin_checked(model, i, stamp); }
  Effects operator()(const PinKept& i) const { return on_pin_kept(model, i, stamp); }
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

}  // namespace rackside::kiosk
