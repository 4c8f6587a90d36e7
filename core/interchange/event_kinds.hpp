#pragma once
// What each kind of event makes of the cells of its row. Inside this room only; event_row.hpp is
// the way in.

#include <vector>

#include "core/interchange/event_row.hpp"

namespace rackside::interchange {

/// A row while its details are read.
struct Reading {
  const Row& row;
  const AnimalKeys& keys;
  std::optional<AnimalId> animal;
  std::string note;  // what stands in the cell; readers take out what belongs elsewhere
};

using ReadDetails = Details (*)(Reading&);

struct EventSpec {
  std::string_view event;
  ReadDetails read;
  std::vector<EventColumn> uses = {};  // beside when, animal, event, by and note
};

/// Throws Refusal when the row's event is none of ours.
[[nodiscard]] const EventSpec& spec_of(const Row& row);

/// Throws Refusal when the cell is not the key of one animal.
[[nodiscard]] AnimalId read_animal(const Row& row, std::size_t column, const AnimalKeys& keys);

/// Refuses a word that is none of `choices`.
[[noreturn]] void refuse_word(const Row& row, std::size_t column, std::string_view choices);

// Readings with a unit, in event_measures.cpp.
inline constexpr double longest_mm = 1000;
[[nodiscard]] Details read_measure(Reading& reading);
[[nodiscard]] Details read_temperature(Reading& reading);
[[nodiscard]] Details read_humidity(Reading& reading);

}  // namespace rackside::interchange
