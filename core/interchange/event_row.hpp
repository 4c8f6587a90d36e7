#pragma once
// A row of events.csv.

#include "core/event/event.hpp"
#include "core/interchange/animal_keys.hpp"
#include "core/interchange/dates.hpp"

namespace rackside::interchange {

enum EventColumn : std::size_t {
  EventWhen,
  EventAnimal,
  EventKind,
  EventOutcome,
  EventPrey,
  EventCount,
  EventSize,
  EventSign,
  EventValue,
  EventUnit,
  EventBy,
  EventNote,
};

[[nodiscard]] std::span<const Column> event_columns();

/// A draft without its id and its tub, which no row has. Throws Refusal.
[[nodiscard]] Draft read_event_row(const Row& row, const AnimalKeys& keys, const Today& today);

/// None for an event that the file has no row for: of a kind that concerns the log or the tubs
/// alone, or about an animal without a key.
[[nodiscard]] std::optional<std::vector<std::string>> event_cells(const Draft& event,
                                                                  const AnimalKeys& keys);

}  // namespace rackside::interchange
