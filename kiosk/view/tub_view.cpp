#include "kiosk/view/tub_view.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "core/care/instruction.hpp"
#include "core/collection/place.hpp"
#include "core/cover/assistant_words.hpp"
#include "core/event/words.hpp"
#include "core/words/dates.hpp"
#include "core/words/sentences.hpp"
#include "kiosk/model/permission.hpp"
#include "kiosk/view/event_words.hpp"
#include "kiosk/view/record_filter.hpp"
#include "kiosk/view/tiles.hpp"

namespace rackside::kiosk {
namespace {

constexpr std::size_t records_shown = 5;

std::string ordinal(int number) {
  const int tens = number % 100;
  const int ones = number % 10;
  const char* ending = "th";
  if (tens < 11 || tens > 13) {
    if (ones == 1) ending = "st";
    if (ones == 2) ending = "nd";
    if (ones == 3) ending = "rd";
  }
  return fmt::format("{}{}", number, ending);
}

std::string who_words(const AnimalState& animal) {
  std::string text;
  const auto part = [&](std::string_view words) {
    if (words.empty()) return;
    if (!text.empty()) text += ", ";
    text += words;
  };
  if (animal.count > 1) part(fmt::format("group of {}", animal.count));
  if (animal.sex != Sex::Unknown && animal.stage != Stage::MatureMale) part(word_of(animal.sex));
  if (animal.stage != Stage::Unknown) part(word_of(animal.stage));
  if (animal.instar) part(ordinal(*animal.instar) + " instar");
  part(animal.key);
  return text;
}

// On the tile that would record it, so that nobody records what was not in the forceps.
void name_prey(TubView& view, const Model& model) {
  const auto prey = prey_offered(model);
  const auto took = std::ranges::find(view.tiles, Action::Took, &Tile::action);
  if (!prey || took == view.tiles.end()) return;
  took->below.push_back(count_of(prey->count, prey->kind));
  if (prey->size)
    took->below.push_back(about_length_words(*prey->size, model.rules.collection.wording.units));
}

void fill_plainly(TubView& view, const Model& model) {
  const Instruction said = *instruction_here(model);
  view.plain = true;
  view.state = assistant_sentence(said, model.settings.wording.units);
  view.urgent = said.urgent;
  view.also = assistant_extras(said, model.settings.wording.units);
  view.caution = said.caution;
  for (const Action action : model.tub->for_stand_in)
    view.tiles.push_back({action, mark_of(action), std::string(action_word(action)), false, {}});
  name_prey(view, model);
}

std::string neighbour_words(const Model& model) {
  const std::size_t count = model.collection.enclosure(model.tub->code)->residents.size();
  return count > 1 ? fmt::format("{} of {} here", model.tub->shown + 1, count) : std::string{};
}

void fill_living(TubView& view, const Model& model, const AnimalState& animal) {
  view.neighbours = neighbour_words(model);
  if (stands_in(model)) return fill_plainly(view, model);
  const auto found = model.forecasts.find(animal.id);
  const Forecast* forecast = found == model.forecasts.end() ? nullptr : &found->second;
  const CareRules rules = model.rules.rules_for(animal);
  const Instruction instruction = *instruction_here(model);
  view.state = state_sentence(animal, forecast, rules, model.now);
  view.urgent = instruction.urgent;
  view.task = instruction.sentence;
  for (const Task task : instruction.also) view.also.emplace_back(task_words(task));
  view.caution = instruction.caution;
  view.why = instruction.why;
  if (model.tub->history)
    view.strip = view_strip({.history = *model.tub->history,
                             .forecast = forecast,
                             .density = model.tub->density ? &*model.tub->density : nullptr,
                             .now = model.now,
                             .wording = model.settings.wording,
                             .newest = model.undo ? &model.undo->event : nullptr,
                             .warmth = &model.warmth,
                             .rack = model.collection.enclosure(model.tub->code)->place.rack});
  const auto& order = tile_order(model.tub->tiles_for);
  for (std::size_t i = 0; i < order.size(); ++i)
    view.tiles.push_back(
        {order[i], mark_of(order[i]), std::string(action_word(order[i])), i < first_tiles, {}});
  name_prey(view, model);
}

void fill_gone(TubView& view, const Model& model, const AnimalState& animal) {
  const Day today = model.now.day();
  const Day ended = animal.ended->moment.day();
  const char* how = animal.life == Life::Died ? "died" : "left";
  view.state = fmt::format("Empty: it {} {}", how, ago_words(ended, today));
  view.task = "Nothing to do here. What it left on record stays.";
}

RecordLine record_line_of(const Model& model, const Event& event, bool gone) {
  const Wording& wording = model.settings.wording;
  return {event.id,
          mark_of(event.details),
          when_words(event.when, model.now, wording.dates),
          event_words(event, model.collection, wording.units),
          event.by,
          gone,
          !gone && !std::holds_alternative<AnimalAdded>(event.details)};
}

}  // namespace

TubView view_tub(const Model& model) {
  TubView view;
  const EnclosureState* enclosure = model.collection.enclosure(model.tub->code);
  view.place = enclosure ? format_place(enclosure->place) : "";
  view.code = model.tub->code.grouped();
  view.notice = telling(model);
  view.saving = !model.saving.empty();
  const auto animal = shown_animal(model);
  if (!animal) {
    view.state = "Nobody lives in this tub yet";
    return view;
  }
  view.species = display_name(*animal);
  view.who = who_words(*animal);
  if (animal->life == Life::Living)
    fill_living(view, model, *animal);
  else
    fill_gone(view, model, *animal);
  view.records = view_records(model);
  view.records.resize(std::min(view.records.size(), records_shown));
  if (model.undo) view.undo = model.undo->what;
  return view;
}

RecordLine view_record(const Model& model, const Event& event) {
  const bool gone = taken_back(*model.tub->history).contains(event.id);
  return record_line_of(model, event, gone);
}

std::vector<RecordLine> view_records(const Model& model, RecordFilter filter) {
  if (!model.tub || !model.tub->history) return {};
  const auto gone = taken_back(*model.tub->history);
  std::vector<RecordLine> lines;
  for (const Event& event : *model.tub->history) {
    if (std::holds_alternative<Retracted>(event.details)) continue;
    if (filter == RecordFilter::All || kind_of_record(event.details) == filter)
      lines.push_back(record_line_of(model, event, gone.contains(event.id)));
  }
  std::ranges::reverse(lines);
  return lines;
}

}  // namespace rackside::kiosk
