#include "core/store/event_row.hpp"

#include <algorithm>

#include "core/event/details_json.hpp"

namespace rackside::store {
namespace {

enum Column {
  Id,
  Kiosk,
  Number,
  By,
  At,
  Offset,
  Exact,
  Written,
  Kind,
  Animal,
  Enclosure,
  Json,
  Note
};
static_assert(Note + 1 == event_column_count);

Uuid uuid_at(const Statement& row, int column) {
  Uuid id;
  const auto bytes = row.bytes(column);
  // The table's own checks hold the length; a damaged file may break them.
  std::ranges::copy(bytes.first(std::min(bytes.size(), id.bytes.size())), id.bytes.begin());
  return id;
}

Instant instant_at(const Statement& row, int column) {
  return Instant{std::chrono::milliseconds{row.integer(column)}};
}

When when_of(const Statement& row) {
  return {{instant_at(row, At), std::chrono::minutes{row.integer(Offset)}},
          row.integer(Exact) != 0 ? Precision::Exact : Precision::DayOnly};
}

}  // namespace

void bind_event(Statement& insert, const Event& event, const std::string& details) {
  insert.bind(Id + 1, event.id.value.bytes);
  insert.bind(Kiosk + 1, event.kiosk.value.bytes);
  insert.bind(Number + 1, event.number);
  insert.bind(By + 1, event.by);
  insert.bind(At + 1, event.when.moment.utc.time_since_epoch().count());
  insert.bind(Offset + 1, event.when.moment.offset.count());
  insert.bind(Exact + 1, std::int64_t{event.when.precision == Precision::Exact});
  insert.bind(Written + 1, event.written.time_since_epoch().count());
  insert.bind(Kind + 1, kind_name(event.details));
  if (event.animal)
    insert.bind(Animal + 1, event.animal->value.bytes);
  else
    insert.bind_nothing(Animal + 1);
  if (event.enclosure)
    insert.bind(Enclosure + 1, event.enclosure->text());
  else
    insert.bind_nothing(Enclosure + 1);
  insert.bind(Json + 1, details);
  insert.bind(Note + 1, event.note);
}

Result<Event> read_event(const Statement& row) {
  auto details = details_from_json(row.text(Kind), row.text(Json));
  if (!details) return tl::unexpected(details.error());
  Event event;
  event.details = *std::move(details);
  if (!row.is_nothing(Enclosure)) {
    const auto code = parse_code(row.text(Enclosure));
    if (!code) return tl::unexpected(code.error());
    event.enclosure = *code;
  }
  if (!row.is_nothing(Animal)) event.animal = AnimalId{uuid_at(row, Animal)};
  event.id = EventId{uuid_at(row, Id)};
  event.kiosk = KioskId{uuid_at(row, Kiosk)};
  event.number = row.integer(Number);
  event.by = row.text(By);
  event.when = when_of(row);
  event.written = instant_at(row, Written);
  event.note = row.text(Note);
  return event;
}

}  // namespace rackside::store
