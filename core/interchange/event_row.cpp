// Rows as events. Writing them is in event_cells.cpp.

#include "core/interchange/event_row.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "core/interchange/event_kinds.hpp"

namespace rackside::interchange {
namespace {

constexpr std::array columns{
    Column{"when", true}, Column{"animal", true}, Column{"event", true}, Column{"outcome"},
    Column{"prey"},       Column{"count"},        Column{"size_mm"},     Column{"sign"},
    Column{"value"},      Column{"unit"},         Column{"by"},          Column{"note"},
};
static_assert(columns.size() == EventNote + 1);

// A cell that the event has no use for is more likely a slip of the row than something to drop.
void refuse_unused(const Row& row, const EventSpec& spec) {
  for (std::size_t column = EventOutcome; column < EventBy; ++column)
    if (!row.empty(column) && std::ranges::find(spec.uses, column) == spec.uses.end())
      row.refuse(column, fmt::format("The event \"{}\" has no use for \"{}\" here.", spec.event,
                                     row.text(column)));
}

bool may_be_the_room_s(const EventSpec& spec) {
  return spec.read == read_temperature || spec.read == read_humidity;
}

}  // namespace

std::span<const Column> event_columns() { return columns; }

Draft read_event_row(const Row& row, const AnimalKeys& keys, const Today& today) {
  Draft draft;
  draft.when = read_when(row, EventWhen, today);
  const EventSpec& spec = spec_of(row);
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
