#include "kiosk/view/map_view.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <map>

#include "core/care/condition.hpp"
#include "core/words/sentences.hpp"

namespace rackside::kiosk {
namespace {

Mark mark_of(Condition condition) {
  switch (condition) {
    case Condition::Moulting: return Mark::OnItsBack;
    case Condition::Shrivelled: return Mark::Thin;
    case Condition::Hardening: return Mark::Moult;
    case Condition::MatureMale: return Mark::Sexed;
    case Condition::GuardsSac: return Mark::Sac;
    case Condition::Premoult: return Mark::Dark;
    case Condition::MoultedUnseen: return Mark::Shed;
    case Condition::Fasting: return Mark::Refused;
    case Condition::Newcomer: return Mark::Arrived;
    case Condition::Feeding: return Mark::Taken;
    case Condition::Gone: return Mark::Gone;
  }
  return Mark::None;
}

void name_state(MapCell& cell, std::string_view word, Mark mark) {
  cell.word = word;
  cell.letters = word.substr(0, 2);
  cell.letters.front() = static_cast<char>(cell.letters.front() - 'a' + 'A');
  cell.mark = mark;
}

std::optional<int> whole_number(const std::string& text) {
  int value = 0;
  const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (problem != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  return value;
}

using Tubs = std::vector<const EnclosureState*>;

// Numbers that skip more places than they fill are names, not places.
bool are_places(const Tubs& tubs) {
  for (std::size_t i = 0; i < tubs.size(); ++i) {
    const auto here = whole_number(tubs[i]->place.position);
    if (!here) return false;
    if (i > 0 && *here <= *whole_number(tubs[i - 1]->place.position)) return false;
  }
  const int span =
      *whole_number(tubs.back()->place.position) - *whole_number(tubs.front()->place.position) + 1;
  return span <= 2 * static_cast<int>(tubs.size());
}

std::vector<std::optional<Code>> places_of(const Tubs& tubs) {
  std::vector<std::optional<Code>> places;
  const bool gaps = are_places(tubs);
  int next = gaps ? *whole_number(tubs.front()->place.position) : 0;
  for (const EnclosureState* tub : tubs) {
    if (gaps)
      for (; next < *whole_number(tub->place.position); ++next) places.emplace_back();
    ++next;
    places.emplace_back(tub->code);
  }
  return places;
}

std::map<std::string, int> due_by_rack(const DayPlan& plan) {
  std::map<std::string, int> due;
  for (const TubTask& tub : plan.due) ++due[tub.place.rack];
  return due;
}

}  // namespace

std::string rack_title(const std::string& rack) {
  return rack.empty() ? "no rack given" : "rack " + rack;
}

std::vector<MapShelf> view_rack(const Model& model, const std::string& rack) {
  std::vector<std::pair<std::string, Tubs>> shelves;
  for (const EnclosureState* tub : walking_order(model.collection)) {
    if (tub->place.rack != rack) continue;
    if (shelves.empty() || shelves.back().first != tub->place.shelf)
      shelves.push_back({tub->place.shelf, {}});
    shelves.back().second.push_back(tub);
  }
  std::vector<MapShelf> list;
  for (const auto& [shelf, tubs] : shelves) list.push_back({shelf, places_of(tubs)});
  return list;
}

MapCell view_cell(const Model& model, const Code& code) {
  const EnclosureState& tub = *model.collection.enclosure(code);
  MapCell cell{.position = tub.place.position, .last = model.last_tub == code};
  if (tub.residents.empty()) {
    name_state(cell, "empty", Mark::Housed);
    return cell;
  }
  // Without the whole history nothing can be said about how it is.
  if (!model.overview_known) return cell;
  Condition weightiest = Condition::Gone;
  for (const AnimalId& id : tub.residents) {
    const AnimalState& animal = *model.collection.animal(id);
    const auto found = model.forecasts.find(id);
    const Forecast* forecast = found == model.forecasts.end() ? nullptr : &found->second;
    const CareRules rules = model.rules.rules_for(animal);
    const RackClimate air = model.climate.at(tub.place.rack);
    weightiest = std::min(weightiest, condition_of(animal, forecast, rules, model.now));
    const Instruction said = instruct(animal, forecast, rules, &air, model.now);
    cell.due = cell.due || said.urgency == Urgency::Due;
  }
  name_state(cell, condition_word(weightiest), mark_of(weightiest));
  return cell;
}

std::vector<RackLine> view_racks(const Model& model) {
  const auto due = due_by_rack(model.plan);
  std::vector<RackLine> lines;
  std::vector<int> tubs;
  for (const EnclosureState* tub : walking_order(model.collection)) {
    if (lines.empty() || lines.back().rack != tub->place.rack) {
      lines.push_back({tub->place.rack, rack_title(tub->place.rack), {}});
      tubs.push_back(0);
    }
    ++tubs.back();
  }
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const auto found = due.find(lines[i].rack);
    lines[i].detail =
        fmt::format("{}, {} due", count_of(tubs[i], "tub"), found == due.end() ? 0 : found->second);
  }
  return lines;
}

}  // namespace rackside::kiosk
