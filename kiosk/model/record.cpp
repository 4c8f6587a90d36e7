#include <fmt/format.h>

#include <algorithm>

#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

// A thumb that bounces on the glass records once.
constexpr std::chrono::milliseconds bounce{700};

const Event* newest(const std::vector<Event>& history) {
  const auto found = std::ranges::max_element(history, {}, &Event::id);
  return found == history.end() ? nullptr : &*found;
}

bool bounced(const Model& model, const Details& details, const Stamp& stamp) {
  if (!model.saving.empty()) return true;
  const Event* last = newest(*model.tub->history);
  return last != nullptr && last->details == details && model.undo &&
         model.undo->event == last->id && stamp.now.utc - last->when.moment.utc < bounce;
}

std::optional<std::string> why_not(const Model& model) {
  if (!model.tub) return "Scan a tub first, then the card. Nothing was recorded.";
  const auto animal = shown_animal(model);
  if (!animal || animal->life != Life::Living)
    return "Nobody lives in this tub. Nothing was recorded.";
  if (!model.tub->history) return "Still reading this animal's records. Tap again in a moment.";
  return std::nullopt;
}

Effects save(Model& model, Draft draft) {
  model.saving.push_back(draft.id);
  return {SaveDrafts{{std::move(draft)}}};
}

Draft draft_for(const Model& model, const Stamp& stamp, Details details) {
  Draft draft = draft_now(model.by, stamp, std::move(details));
  draft.animal = model.tub->animal;
  draft.enclosure = model.tub->code;
  return draft;
}

// Whether it is a reading of the room, or takes one back; then what is known of the air follows.
bool changes_air(Model& model, const Event& event) {
  if (event.animal) return false;
  const AirDays before = model.air;
  apply(model.air, event);
  apply(model.warmth, event);
  if (const auto* retracted = std::get_if<Retracted>(&event.details)) {
    forget(model.air, retracted->target);
    forget(model.warmth, retracted->target);
  }
  if (model.air == before) return false;
  model.climate = climate_of(model.air);
  return true;
}

std::string what_was(const Details& details, Units units) {
  if (const auto* looked = std::get_if<Looked>(&details))
    return looked->signs.empty() ? "nothing unusual" : format_signs(looked->signs);
  if (const auto* offered = std::get_if<Offered>(&details)) {
    for (const Action action : {Action::Took, Action::Refused, Action::LeftOvernight})
      if (std::get<Offered>(*details_of(action)).outcome == offered->outcome)
        return std::string(action_word(action));
  }
  const std::string number = number_words(details, units);
  return number.empty() ? std::string(kind_name(details)) : number;
}

// The plan knows what is in the forceps; nobody has to type it.
void name_prey(const Model& model, Offered& offered) {
  const auto prey = prey_offered(model);
  if (!prey) return;
  offered.prey = prey->kind;
  offered.count = prey->count;
  offered.size = prey->size;
}

void remember(Model& model, const Event& event) {
  const bool shown = model.tub && event.animal && model.tub->animal == event.animal;
  if (!shown || !model.tub->history) {
    apply(model.collection, event);
    return;
  }
  model.tub->history->push_back(event);
  if (const auto animal = fold_animal(*model.tub->history)) replace(model.collection, *animal);
}

void after_retraction(Model& model, const Event& event) {
  const EventId target = std::get<Retracted>(event.details).target;
  if (model.undo && model.undo->event == target) model.undo.reset();
  tell(model, Tone::Done, "Undone. Both entries stay in the records.");
}

void after_record(Model& model, const Event& event, const std::string& without) {
  const std::string what = what_was(event.details, model.rules.collection.wording.units);
  const bool flagged = std::holds_alternative<Flagged>(event.details);
  tell(model, without.empty() ? Tone::Done : Tone::Problem,
       flagged ? flag_saved_words(model, without) : fmt::format("Saved: {}.", what));
  model.undo = UndoOffer{event.id, event.animal, event.enclosure, what, event.by};
}

}  // namespace

Effects record(Model& model, Action action, const Stamp& stamp) {
  if (action == Action::Undo) {
    if (model.undo) return take_back(model, model.undo->event, stamp);
    tell(model, Tone::Tell, "There is nothing to undo here. The records hold what was entered.");
    return {};
  }
  if (const auto reason = why_not(model)) {
    tell(model, Tone::Problem, *reason);
    return {};
  }
  Details details = *details_of(action);
  if (auto* offered = std::get_if<Offered>(&details)) name_prey(model, *offered);
  if (bounced(model, details, stamp)) return {};
  return save(model, draft_for(model, stamp, details));
}

Effects take_back(Model& model, EventId event, const Stamp& stamp) {
  const bool of_the_room = model.undo && model.undo->event == event && !model.undo->animal;
  if (of_the_room && model.saving.empty())
    return save(model, draft_now(model.by, stamp, Retracted{event}));
  if (!model.tub || !model.saving.empty()) return {};
  return save(model, draft_for(model, stamp, Retracted{event}));
}

Effects on_saved(Model& model, const Saved& saved, const Stamp& stamp) {
  for (const Draft& draft : saved.drafts) std::erase(model.saving, draft.id);
  if (!saved.events) {
    for (const Draft& draft : saved.drafts) keep_words(model, draft);
    tell(model, Tone::Problem, saved.events.error().sentence);
    return {};
  }
  Effects effects;
  const bool about_cover = std::ranges::any_of(
      *saved.events, [&](const Event& event) { return is_about_cover(model, event.details); });
  for (const Event& event : *saved.events) {
    remember(model, event);
    note_for_round(model, event);
    if (model.number && model.number->draft == event.id) model.number.reset();
    if (!event.animal && !changes_air(model, event)) {
      for (Effect& effect :
           about_cover ? on_cover_event(model, event) : on_people_event(model, event, stamp))
        effects.push_back(std::move(effect));
      continue;
    }
    model.plan_stale = true;
    if (std::holds_alternative<Retracted>(event.details))
      after_retraction(model, event);
    else
      after_record(model, event, saved.without);
    if (event.animal && model.tub && model.tub->animal == event.animal && model.tub->history)
      effects.push_back(ForecastAnimal{*event.animal, *model.tub->history});
  }
  return effects;
}

}  // namespace rackside::kiosk
