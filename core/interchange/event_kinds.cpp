#include "core/interchange/event_kinds.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "core/event/words.hpp"
#include "core/interchange/animal_row.hpp"

namespace rackside::interchange {
namespace {

constexpr int most_counted = 100'000;

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

Details read_sex(Reading& reading) {
  const std::string word = reading.row.word(EventValue);
  if (word == "female") return Sexed{Sex::Female, Stage::Unknown};
  if (word == "male") return Sexed{Sex::Male, Stage::Unknown};
  if (word == "mature male") return Sexed{Sex::Male, Stage::MatureMale};
  refuse_word(reading.row, EventValue, "female, male, mature male");
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

const std::vector<EventSpec>& specs() {
  static const std::vector<EventSpec> table{
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
  for (const EventSpec& spec : specs()) names.push_back(spec.event);
  return fmt::format("{}", fmt::join(names, ", "));
}

}  // namespace

const EventSpec& spec_of(const Row& row) {
  const auto found = std::ranges::find(specs(), row.word(EventKind), &EventSpec::event);
  if (found == specs().end()) refuse_word(row, EventKind, event_names());
  return *found;
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

[[noreturn]] void refuse_word(const Row& row, std::size_t column, std::string_view choices) {
  if (row.empty(column))
    row.refuse(column, fmt::format("This cell must be filled in: {}.", choices));
  row.refuse(column, fmt::format("\"{}\" is none of {}.", row.text(column), choices));
}

}  // namespace rackside::interchange
