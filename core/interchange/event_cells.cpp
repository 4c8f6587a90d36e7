// Events as rows. Reading them back is in event_row.cpp.

#include <fmt/format.h>

#include "core/event/words.hpp"
#include "core/interchange/event_row.hpp"

namespace rackside::interchange {
namespace {

using Cells = std::vector<std::string>;

// Fills in what only this kind has. False: there is no row for it.
struct Fill {
  Cells& cells;
  const Draft& event;
  const AnimalKeys& keys;

  bool operator()(const Offered& e) const {
    cells[EventOutcome] = word_of(e.outcome);
    cells[EventPrey] = e.prey;
    if (e.count) cells[EventCount] = std::to_string(*e.count);
    if (e.size) cells[EventSize] = fmt::format("{}", e.size->value);
    return true;
  }
  bool operator()(const Looked& e) const {
    cells[EventSign] = format_signs(e.signs);
    return true;
  }
  bool operator()(const Measured& e) const {
    measure(e.length.value, "mm");
    cells[EventNote] = word_of(e.what);
    if (!event.note.empty()) cells[EventNote] += "; " + event.note;
    return true;
  }
  bool operator()(const Sexed& e) const {
    if (e.sex == Sex::Unknown) return false;
    const bool mature = e.sex == Sex::Male && e.stage == Stage::MatureMale;
    cells[EventValue] = mature ? word_of(e.stage) : word_of(e.sex);
    return true;
  }
  bool operator()(const TemperatureRead& e) const {
    measure(e.temperature.value, "C");
    if (!event.animal) cells[EventNote] = e.rack;
    return true;
  }
  bool operator()(const HumidityRead& e) const {
    measure(e.humidity.value, "%");
    if (!event.animal) cells[EventNote] = e.rack;
    return true;
  }
  bool operator()(const Rehoused& e) const {
    cells[EventValue] = e.to.text();
    return true;
  }
  bool operator()(const Paired& e) const {
    const auto other = keys.key_of(e.with);
    if (!other || e.with == event.animal) return false;
    cells[EventValue] = *other;
    return true;
  }
  bool operator()(const Counted& e) const {
    cells[EventCount] = std::to_string(e.count);
    return true;
  }

  // Kinds that say everything by being there.
  bool operator()(const Died&) const { return true; }
  bool operator()(const Left&) const { return true; }
  bool operator()(const PreyRemoved&) const { return true; }
  bool operator()(const Misted&) const { return true; }
  bool operator()(const WaterFilled&) const { return true; }
  bool operator()(const Moulted&) const { return true; }
  bool operator()(const ShedFound&) const { return true; }
  bool operator()(const ShedRemoved&) const { return true; }
  bool operator()(const Noted&) const { return true; }
  bool operator()(const EggSac&) const { return true; }
  bool operator()(const Pulled&) const { return true; }

  // Kinds without a row: animals have their own file, the rest is about the log and the tubs.
  template <class Other>
  bool operator()(const Other&) const {
    return false;
  }

 private:
  void measure(double value, const char* unit) const {
    cells[EventValue] = fmt::format("{}", value);
    cells[EventUnit] = unit;
  }
};

bool may_be_the_room_s(const Details& details) {
  return std::holds_alternative<TemperatureRead>(details) ||
         std::holds_alternative<HumidityRead>(details);
}

}  // namespace

std::optional<std::vector<std::string>> event_cells(const Draft& event, const AnimalKeys& keys) {
  Cells cells(event_columns().size());
  if (event.animal) {
    const auto key = keys.key_of(*event.animal);
    if (!key) return std::nullopt;
    cells[EventAnimal] = *key;
  } else if (!may_be_the_room_s(event.details)) {
    return std::nullopt;
  }
  cells[EventWhen] = format_when(event.when);
  cells[EventKind] = kind_name(event.details);
  cells[EventBy] = event.by;
  cells[EventNote] = event.note;
  if (!std::visit(Fill{cells, event, keys}, event.details)) return std::nullopt;
  return cells;
}

}  // namespace rackside::interchange
