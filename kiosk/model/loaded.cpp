#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

// The label is on its tub: somebody has just scanned it there.
Effects confirm_label(const Model& model, const Code& code, const Stamp& stamp) {
  const EnclosureState* enclosure = model.collection.enclosure(code);
  if (!enclosure->label_printed || enclosure->label_confirmed) return {};
  return {SaveDrafts{{Draft{.id = stamp.fresh,
                            .by = model.by,
                            .when = When{stamp.now, Precision::Exact},
                            .animal = {},
                            .enclosure = code,
                            .details = LabelConfirmed{},
                            .note = {}}}}};
}

}  // namespace

Effects on_history(Model& model, const HistoryLoaded& loaded, const Stamp& stamp) {
  if (!model.tub || model.tub->code != loaded.tub || model.tub->animal != loaded.animal) return {};
  if (!loaded.events) {
    tell(model, Tone::Problem, loaded.events.error().sentence);
    return {};
  }
  model.tub->history = *loaded.events;
  if (const auto animal = fold_animal(*loaded.events)) replace(model.collection, *animal);
  Effects effects = confirm_label(model, loaded.tub, stamp);
  effects.push_back(ForecastAnimal{loaded.animal, *loaded.events});
  return effects;
}

void on_roster(Model& model, const RosterLoaded& loaded) {
  if (!loaded.collection) {
    tell(model, Tone::Problem, loaded.collection.error().sentence);
    return;
  }
  model.collection = *loaded.collection;
  model.roster_known = true;
}

void on_overview(Model& model, const OverviewReady& ready) {
  model.collection = ready.collection;
  model.forecasts = ready.forecasts;
  model.rules = ready.rules;
  model.climate = ready.climate;
  model.roster_known = true;
  model.overview_known = true;
  // What was saved while the overview was being read is in the open tub's history.
  if (model.tub && model.tub->history)
    if (const auto animal = fold_animal(*model.tub->history)) replace(model.collection, *animal);
}

}  // namespace rackside::kiosk
