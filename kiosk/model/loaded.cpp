#include <fmt/format.h>

#include <utility>

#include "core/cover/assistant_actions.hpp"
#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

// The label is on its tub: somebody has just scanned it there.
Effects confirm_label(const Model& model, const Code& code, const Stamp& stamp) {
  const EnclosureState* enclosure = model.collection.enclosure(code);
  if (!enclosure->label_printed || enclosure->label_confirmed) return {};
  Draft draft = draft_now(model.by, stamp, LabelConfirmed{});
  draft.enclosure = code;
  return {SaveDrafts{{std::move(draft)}}};
}

// The roster knows who lives where but not what they ate: an animal that is known more fully stays
// as it is, unless it has moved.
void take_over(Model& model, Collection roster) {
  if (!model.overview_known) {
    model.collection = std::move(roster);
    return;
  }
  for (const auto& [code, enclosure] : roster.enclosures)
    model.collection.enclosures.try_emplace(code, EnclosureState{.code = code})
        .first->second.place = enclosure.place;
  for (const auto& [id, animal] : roster.animals) {
    const AnimalState* known = model.collection.animal(id);
    if (known == nullptr || known->enclosure != animal.enclosure || known->life != animal.life)
      replace(model.collection, animal);
  }
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
  if (const auto said = instruction_here(model)) model.tub->for_stand_in = assistant_actions(*said);
  Effects effects = confirm_label(model, loaded.tub, stamp);
  effects.push_back(ForecastAnimal{loaded.animal, *loaded.events});
  return effects;
}

Effects on_roster(Model& model, const RosterLoaded& loaded, const Stamp& stamp) {
  const auto awaited = std::exchange(model.awaited, std::nullopt);
  if (!loaded.roster) {
    tell(model, Tone::Problem, loaded.roster.error().sentence);
    return {};
  }
  take_over(model, loaded.roster->collection);
  take_people(model, loaded.roster->people);
  model.cover = loaded.roster->cover;
  model.roster_known = true;
  if (!awaited) return {};
  if (awaited->kind() == CodeKind::Person) return welcome(model, *awaited, stamp);
  if (model.collection.enclosure(*awaited) != nullptr) return open_tub(model, *awaited);
  tell(model, Tone::Problem,
       fmt::format("{} is a code of ours, but no tub in this collection has it.",
                   awaited->grouped()));
  return {};
}

void on_overview(Model& model, const OverviewReady& ready) {
  model.collection = ready.overview.collection;
  model.forecasts = ready.overview.forecasts;
  auto instead = std::move(model.rules.collection.instead);
  model.rules = ready.overview.rules;
  model.rules.collection.instead = std::move(instead);
  model.rules.collection.wording = model.settings.wording;
  model.climate = ready.overview.climate;
  model.air = ready.overview.air;
  model.warmth = ready.overview.warmth;
  model.roster_known = true;
  model.overview_known = true;
  model.plan_stale = true;
  take_round(model, ready.round);
  if (model.screen == ScreenName::Round) refresh_plan(model);
  // What was saved while the overview was being read is in the open tub's history.
  if (model.tub && model.tub->history)
    if (const auto animal = fold_animal(*model.tub->history)) replace(model.collection, *animal);
}

}  // namespace rackside::kiosk
