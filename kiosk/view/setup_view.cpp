#include "kiosk/view/setup_view.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

#include "core/words/dates.hpp"
#include "kiosk/view/camera_page_view.hpp"

namespace rackside::kiosk {
namespace {

using std::chrono::minutes;

constexpr double density_step = 0.1;

// A choice that sets one member and leaves the others.
template <class Value>
SetupChoice choice(const Model& model, std::string word, Value Settings::*member, Value value) {
  Settings settings = model.settings;
  const bool chosen = settings.*member == value;
  settings.*member = std::move(value);
  return {std::move(word), SetUp{std::move(settings)}, chosen};
}

SetupRow palette_row(const Model& model) {
  return {"colours",
          "night is a deep red",
          {choice(model, "day", &Settings::palette, PaletteName::Day),
           choice(model, "dusk", &Settings::palette, PaletteName::Dusk),
           choice(model, "night", &Settings::palette, PaletteName::Night)}};
}

SetupRow blank_row(const Model& model) {
  SetupRow row{"goes dark", "after so many minutes", {}};
  for (const int after : {2, 10, 30})
    row.choices.push_back(
        choice(model, fmt::format("{}", after), &Settings::blank_after, minutes{after}));
  row.choices.push_back(choice(model, "never", &Settings::blank_after, minutes{0}));
  return row;
}

SetupRow size_row(const Model& model, double pixels_per_mm) {
  using Density = std::optional<double>;
  const double finer = std::min(most_density, pixels_per_mm * (1 + density_step));
  const double coarser = std::max(least_density, pixels_per_mm / (1 + density_step));
  SetupRow row{"size",
               "keys are 15 mm high if right",
               {choice(model, "smaller", &Settings::pixels_per_mm, Density{coarser}),
                choice(model, "larger", &Settings::pixels_per_mm, Density{finer}),
                choice(model, "guess", &Settings::pixels_per_mm, Density{})}};
  row.choices[0].chosen = row.choices[1].chosen = false;
  return row;
}

// The one after `value`; an unknown one is followed by the first.
template <class List, class Value>
Value after(const List& list, const Value& value) {
  const auto here = std::ranges::find(list, value);
  if (here == list.end() || std::next(here) == list.end()) return list.front();
  return *std::next(here);
}

// Labels go into files, or to one of the printers there are.
SetupRow printer_row(const Model& model) {
  const auto queues = model.printers ? model.printers->queues : std::vector<std::string>{};
  const std::string& chosen = model.settings.printer;
  SetupRow row{"labels go to",
               chosen.empty() ? "files beside the log" : chosen,
               {choice(model, "files", &Settings::printer, std::string{})}};
  if (!queues.empty())
    row.choices.push_back(choice(model, chosen.empty() ? "a printer" : "another printer",
                                 &Settings::printer, after(queues, chosen)));
  else if (model.printers)
    row.detail = "files: no printer is set up";
  return row;
}

SetupRow sheet_row(const Model& model) {
  SetupRow row{"label sheet", model.settings.label_sheet, {}};
  if (model.printers && !model.printers->sheets.empty())
    row.choices.push_back(choice(model, "another", &Settings::label_sheet,
                                 after(model.printers->sheets, model.settings.label_sheet)));
  for (const int dpi : {203, 300, 600})
    row.choices.push_back(choice(model, fmt::format("{} dpi", dpi), &Settings::printer_dpi, dpi));
  return row;
}

SetupRow dates_row(const Model& model) {
  Wording wording = model.settings.wording;
  wording.dates = after(all_date_styles, wording.dates);
  return {"dates",
          long_day_words(model.now.day(), model.settings.wording.dates),
          {choice(model, "another way", &Settings::wording, wording)}};
}

template <class Unit, class All>
SetupRow unit_row(const Model& model, std::string title, const All& all, Unit Units::*member) {
  SetupRow row{std::move(title), "as they are shown", {}};
  for (const Unit unit : all) {
    Wording wording = model.settings.wording;
    wording.units.*member = unit;
    row.choices.push_back(choice(model, std::string(unit_word(unit)), &Settings::wording, wording));
  }
  return row;
}

SetupRow motion_row(const Model& model) {
  return {"motion",
          "a new record lands on the strip",
          {choice(model, "shown", &Settings::motion, Motion::Shown),
           choice(model, "off", &Settings::motion, Motion::Off)}};
}

SetupRow camera_row(const Model& model) {
  return {"camera",
          source_word(model.settings.camera),
          {{"choose and aim", Show{ScreenName::Camera}, false}}};
}

}  // namespace

std::vector<SetupRow> view_setup(const Model& model, double pixels_per_mm) {
  return {palette_row(model),
          size_row(model, pixels_per_mm),
          dates_row(model),
          unit_row(model, "lengths", all_length_units, &Units::length),
          unit_row(model, "warmth", all_temperature_units, &Units::temperature),
          camera_row(model),
          printer_row(model),
          sheet_row(model),
          blank_row(model),
          motion_row(model)};
}

}  // namespace rackside::kiosk
