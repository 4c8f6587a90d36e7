// Rows as events. Writing them is in event_cells.cpp.

#include "core/interchange/event_row.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "core/event/words.hpp"
#include "core/interchange/animal_row.hpp"

namespace rackside::interchange {
namespace {

constexpr std::array columns{
    Column{"when", true}, Column{"animal", true}, Column{"event", true}, Column{"outcome"},
    Column{"prey"},       Column{"count"},        Column{"size_mm"},     Column{"sign"},
    Column{"value"},      Column{"unit"},         Column{"by"},          Column{"note"},
};
static_assert(columns.size() == EventNote + 1);

constexpr int most_counted = 100'000;
constexpr double longest_mm = 1000;

struct Reading {
  const Row& row;
  const AnimalKeys& keys;
  std::optional<AnimalId> animal;
  std::string note;  // what stands in the cell; readers take out what belongs elsewhere
};

[[noreturn]] void refuse_word(const Row& row, std::size_t column, std::string_view choices) {
  if (row.empty(column))
    row.refuse(column, fmt::format("This cell must be filled in: {}.", choices));
  row.refuse(column, fmt::format("\"{}\" is none of {}.", row.text(column), choices));
}

AnimalId read_animal(const Row& row, std::size_t column, const AnimalKeys& keys) {
  const std::string& key = row.text(column);
  if (const auto animal = keys.animal_of(key)) return *animal;
  if (keys.is_shared(key))
    row.refuse(column, fmt::format("Several animals in the log have the key \"{}\". Export them to "
                                   "see the longer keys that tell them apart.",
                                   key));
  row.refuse(column, fmt::format("There is no animal \"{}\", neither in the log nor in the file of "
                                 "animals.",
                                 key));
}

Details read_offer(Reading& reading) {
  const Row& row = reading.row;
  const auto outcome = outcome_from_word(row.word(EventOutcome));
  if (!outcome) refuse_word(row, EventOutcome, "took, refused, left overnight");
  Offered offered{.outcome = *outcome,
                  .prey = row.text(EventPrey),
                  .count = row.whole_number(EventCount, 1, most_counted),
                  .size = {}};
  if (const auto size = row.decimal(EventSize)) {
    if (*size <= 0 || *size > longest_mm)
      row.refuse(EventSize, "A size is more than 0 and at most 1000 mm.");
    offered.size = Millimetres{*size};
  }
  return offered;
}

Details read_look(Reading& reading) {
  const auto signs = parse_signs(reading.row.word(EventSign));
  if (!signs) reading.row.refuse(EventSign, signs.error().sentence + ".");
  return Looked{*signs};
}

double read_value(const Row& row) {
  const auto value = row.decimal(EventValue);
  if (!value) row.refuse(EventValue, "The number that was read is missing.");
  return *value;
}

// "leg span", or "carapace; from the shed": the word goes, what else was noted stays. A word
// anywhere else in the note says what was measured, too, and stays part of it.
Measure take_measure(Reading& reading) {
  const std::string lower = reading.row.word(EventNote);
  std::optional<Measure> found;
  for (const Measure measure : {Measure::LegSpan, Measure::Carapace}) {
    const std::string_view word = word_of(measure);
    if (lower.starts_with(word)) {
      if (trimmed(reading.note).size() == word.size()) {
        reading.note.clear();
        return measure;
      }
      if (reading.note.size() > word.size() + 1 && reading.note.substr(word.size(), 2) == "; ") {
        reading.note.erase(0, word.size() + 2);
        return measure;
      }
    }
    if (lower.find(word) == std::string::npos) continue;
    if (found) reading.row.refuse(EventNote, "The note names both leg span and carapace.");
    found = measure;
  }
  if (!found)
    reading.row.refuse(EventNote, "The note must say what was measured: leg span or carapace.");
  return *found;
}

Details read_measure(Reading& reading) {
  const Row& row = reading.row;
  const double value = read_value(row);
  const std::string unit = row.word(EventUnit);
  Millimetres length;
  if (unit == "mm")
    length = {value};
  else if (unit == "cm")
    length = {value * 10};
  else if (unit == "in")
    length = from_inches(value);
  else
    refuse_word(row, EventUnit, "mm, cm, in");
  if (length.value <= 0 || length.value > longest_mm)
    row.refuse(EventValue, "A length is more than 0 and at most 1000 mm.");
  return Measured{take_measure(reading), length};
}

Details read_sex(Reading& reading) {
  const std::string word = reading.row.word(EventValue);
  if (word == "female") return Sexed{Sex::Female, Stage::Unknown};
  if (word == "male") return Sexed{Sex::Male, Stage::Unknown};
  if (word == "mature male") return Sexed{Sex::Male, Stage::MatureMale};
  refuse_word(reading.row, EventValue, "female, male, mature male");
}

// The note of a reading without an animal is the rack.
std::string take_rack(Reading& reading) {
  return reading.animal ? std::string{} : std::exchange(reading.note, {});
}

Details read_temperature(Reading& reading) {
  const double value = read_value(reading.row);
  const std::string unit = reading.row.word(EventUnit);
  if (unit != "c" && unit != "f") refuse_word(reading.row, EventUnit, "C, F");
  const Celsius temperature = unit == "c" ? Celsius{value} : from_fahrenheit(value);
  if (temperature.value < -50 || temperature.value > 80)
    reading.row.refuse(EventValue, "No room is that cold or warm. Is the unit right?");
  return TemperatureRead{temperature, take_rack(reading)};
}

Details read_humidity(Reading& reading) {
  const double value = read_value(reading.row);
  if (reading.row.word(EventUnit) != "%") refuse_word(reading.row, EventUnit, "%");
  if (value < 0 || value > 100)
    reading.row.refuse(EventValue, "Relative humidity is from 0 to 100 %.");
  return HumidityRead{Percent{value}, take_rack(reading)};
}

Details read_rehousing(Reading& reading) {
  return Rehoused{read_tub(reading.row, EventValue,
                           "Give the code of the tub it was moved to, as it stands on the label.")};
}

Details read_pairing(Reading& reading) {
  const AnimalId other = read_animal(reading.row, EventValue, reading.keys);
  if (other == reading.animal)
    reading.row.refuse(EventValue, "An animal cannot be paired with itself.");
  return Paired{other};
}

Details read_count(Reading& reading) {
  const auto count = reading.row.whole_number(EventCount, 0, most_counted);
  if (!count) reading.row.refuse(EventCount, "How many were counted is missing.");
  return Counted{*count};
}

// How it left belongs into the note; it may also stand as the outcome.
Details read_leaving(Reading& reading) {
  const std::string how = reading.row.word(EventOutcome);
  if (how.empty()) return Left{};
  if (how != "sold" && how != "given" && how != "returned")
    refuse_word(reading.row, EventOutcome, "sold, given, returned");
  reading.note = reading.note.empty() ? how : fmt::format("{}; {}", how, reading.note);
  return Left{};
}

template <class Kind>
Details read_nothing(Reading&) {
  return Kind{};
}

struct Spec {
  std::string_view event;
  Details (*read)(Reading&);
  std::vector<EventColumn> uses = {};  // beside when, animal, event, by and note
};

const std::vector<Spec>& specs() {
  static const std::vector<Spec> table{
      {"offered", read_offer, {EventOutcome, EventPrey, EventCount, EventSize}},
      {"looked", read_look, {EventSign}},
      {"moult", read_nothing<Moulted>},
      {"shed found", read_nothing<ShedFound>},
      {"prey removed", read_nothing<PreyRemoved>},
      {"shed removed", read_nothing<ShedRemoved>},
      {"misted", read_nothing<Misted>},
      {"water filled", read_nothing<WaterFilled>},
      {"rehoused", read_rehousing, {EventValue}},
      {"note", read_nothing<Noted>},
      {"measured", read_measure, {EventValue, EventUnit}},
      {"sexed", read_sex, {EventValue}},
      {"temperature", read_temperature, {EventValue, EventUnit}},
      {"humidity", read_humidity, {EventValue, EventUnit}},
      {"paired", read_pairing, {EventValue}},
      {"egg sac", read_nothing<EggSac>},
      {"pulled", read_nothing<Pulled>},
      {"counted", read_count, {EventCount}},
      {"died", read_nothing<Died>},
      {"left", read_leaving, {EventOutcome}},
  };
  return table;
}

std::string event_names() {
  std::vector<std::string_view> names;
  for (const Spec& spec : specs()) names.push_back(spec.event);
  return fmt::format("{}", fmt::join(names, ", "));
}

const Spec& spec_of(const Row& row) {
  const auto found = std::ranges::find(specs(), row.word(EventKind), &Spec::event);
  if (found == specs().end()) refuse_word(row, EventKind, event_names());
  return *found;
}

// A cell that the event has no use for is more likely a slip of the row than something to drop.
void refuse_unused(const Row& row, const Spec& spec) {
  for (std::size_t column = EventOutcome; column < EventBy; ++column)
    if (!row.empty(column) && std::ranges::find(spec.uses, column) == spec.uses.end())
      row.refuse(column, fmt::format("The event \"{}\" has no use for \"{}\" here.", spec.event,
                                     row.text(column)));
}

bool may_be_the_room_s(const Spec& spec) {
  return spec.read == read_temperature || spec.read == read_humidity;
}

}  // namespace

std::span<const Column> event_columns() { return columns; }

Draft read_event_row(const Row& row, const AnimalKeys& keys, const Today& today) {
  Draft draft;
  draft.when = read_when(row, EventWhen, today);
  const Spec& spec = spec_of(row);
  refuse_unused(row, spec);
  if (!row.empty(EventAnimal))
    draft.animal = read_animal(row, EventAnimal, keys);
  else if (!may_be_the_room_s(spec))
    row.refuse(EventAnimal, fmt::format("Which animal? The event \"{}\" needs one.", spec.event));
  Reading reading{row, keys, draft.animal, row.text(EventNote)};
  draft.details = spec.read(reading);
  draft.by = row.text(EventBy);
  draft.note = std::move(reading.note);
  return draft;
}

}  // namespace rackside::interchange
