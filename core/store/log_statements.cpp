#include "core/store/log_statements.hpp"

#include <fmt/format.h>

#include "core/event/details_json.hpp"
#include "core/store/event_row.hpp"
#include "core/store/opening.hpp"

namespace rackside::store {

std::string select_events(std::string_view rest) {
  return fmt::format("SELECT {} FROM events {}", event_columns, rest);
}

Event event_at(const Statement& row) {
  auto event = read_event(row);
  if (!event) throw StoreFailure(event.error());
  return *std::move(event);
}

std::vector<Event> all_rows(Statement& select) {
  std::vector<Event> events;
  Rows rows(select);
  while (rows.next()) events.push_back(event_at(select));
  return events;
}

LogStatements::LogStatements(Database opened)
    : database(std::move(opened)),
      kiosk(kiosk_in(database)),
      by_animal(database.prepare(select_events("WHERE animal = ? ORDER BY at, id"))),
      by_enclosure(database.prepare(select_events("WHERE enclosure = ? ORDER BY at, id"))),
      written_after(database.prepare(fmt::format(
          "SELECT {}, position FROM events WHERE position > ? ORDER BY position LIMIT ?",
          event_columns))),
      insert_(database.prepare(fmt::format(
          "INSERT INTO events ({}) VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?) ON CONFLICT (id) DO NOTHING",
          event_columns))),
      last_number_(database.prepare("SELECT max(number) FROM events WHERE kiosk = ?")),
      by_id_(database.prepare(select_events("WHERE id = ?"))),
      by_number_(database.prepare("SELECT 1 FROM events WHERE kiosk = ? AND number = ?")) {}

bool LogStatements::write(const Event& event) {
  const std::string details = details_to_json(event.details);
  bind_event(insert_, event, details);
  insert_.run();
  return database.changes() == 1;
}

std::int64_t LogStatements::next_number() {
  last_number_.bind(1, kiosk.value.bytes);
  Rows rows(last_number_);
  return rows.next() ? last_number_.integer(0) + 1 : 1;
}

std::optional<Event> LogStatements::find(const EventId& id) {
  by_id_.bind(1, id.value.bytes);
  Rows rows(by_id_);
  if (!rows.next()) return std::nullopt;
  return event_at(by_id_);
}

bool LogStatements::number_is_taken(const Event& event) {
  by_number_.bind(1, event.kiosk.value.bytes);
  by_number_.bind(2, event.number);
  return Rows(by_number_).next();
}

void LogStatements::introduce(const KioskId& id) const {
  Statement insert = database.prepare("INSERT OR IGNORE INTO kiosks (id) VALUES (?)");
  insert.bind(1, id.value.bytes);
  insert.run();
}

}  // namespace rackside::store
