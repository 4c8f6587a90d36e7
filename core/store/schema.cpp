#include "core/store/schema.hpp"

#include <fmt/format.h>

#include "core/collection/collection.hpp"

namespace rackside::store {
namespace {

// `position` is the order of writing. `at` and `written` are UTC milliseconds, `utc_offset` is
// minutes, `exact` is 0 where only the day is known. The indexes end in (at, id), the order in
// which events are told, so that reading needs no sorting.
constexpr const char* tables = R"(
CREATE TABLE meta (
  name TEXT NOT NULL PRIMARY KEY,
  value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE kiosks (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16)
) STRICT, WITHOUT ROWID;

CREATE TABLE events (
  position INTEGER PRIMARY KEY,
  id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
  kiosk BLOB NOT NULL REFERENCES kiosks (id),
  number INTEGER NOT NULL CHECK (number >= 1),
  "by" TEXT NOT NULL,
  at INTEGER NOT NULL,
  utc_offset INTEGER NOT NULL,
  exact INTEGER NOT NULL CHECK (exact IN (0, 1)),
  written INTEGER NOT NULL,
  kind TEXT NOT NULL,
  animal BLOB CHECK (length(animal) = 16),
  enclosure TEXT CHECK (length(enclosure) = 8),
  details TEXT NOT NULL,
  note TEXT NOT NULL,
  UNIQUE (kiosk, number)
) STRICT;

CREATE INDEX events_by_animal ON events (animal, at, id);
CREATE INDEX events_by_enclosure ON events (enclosure, at, id) WHERE enclosure IS NOT NULL;

CREATE TRIGGER events_never_change BEFORE UPDATE ON events
BEGIN SELECT RAISE(ABORT, 'events never change; retract them'); END;
CREATE TRIGGER events_never_go BEFORE DELETE ON events
BEGIN SELECT RAISE(ABORT, 'events are never deleted; retract them'); END;
CREATE TRIGGER kiosks_never_change BEFORE UPDATE ON kiosks
BEGIN SELECT RAISE(ABORT, 'kiosks never change'); END;
CREATE TRIGGER kiosks_never_go BEFORE DELETE ON kiosks
BEGIN SELECT RAISE(ABORT, 'kiosks are never deleted'); END;
)";

std::string roster_index() {
  return fmt::format("CREATE INDEX events_of_roster ON events (at, id) WHERE {}",
                     roster_condition());
}

bool is_empty(const Database& database) {
  return database.integer("SELECT count(*) FROM sqlite_schema") == 0;
}

void put_meta(const Database& database, std::string_view name, std::string_view value) {
  Statement insert = database.prepare("INSERT INTO meta (name, value) VALUES (?, ?)");
  insert.bind(1, name);
  insert.bind(2, value);
  insert.run();
}

int version_in(const Database& database, const char* name) {
  return static_cast<int>(database.integer(
      fmt::format("SELECT CAST(value AS INTEGER) FROM meta WHERE name = '{}'", name)));
}

}  // namespace

std::string roster_condition() {
  return fmt::format("kind IN ('{}')", fmt::join(roster_kinds(), "', '"));
}

void create_schema(const Database& database, const KioskId& kiosk) {
  if (!is_empty(database)) return;
  Transaction transaction(database);
  if (!is_empty(database)) return;
  database.run(tables);
  database.run(roster_index());
  put_meta(database, "schema_version", std::to_string(schema_version));
  put_meta(database, "minimum_reader_version", std::to_string(minimum_reader_version));
  put_meta(database, "kiosk", format_uuid(kiosk.value));
  Statement insert = database.prepare("INSERT INTO kiosks (id) VALUES (?)");
  insert.bind(1, kiosk.value.bytes);
  insert.run();
  database.run(fmt::format("PRAGMA application_id = {}; PRAGMA user_version = {}", application_id,
                           schema_version));
  transaction.commit();
}

void check_schema(const Database& database, Access access) {
  const std::string log = database.path().string();
  if (database.integer("PRAGMA application_id") != application_id)
    throw StoreFailure({ErrorKind::NotOurs,
                        fmt::format("{} is not a Rackside log. It was left as it is.", log), log});
  if (version_in(database, "minimum_reader_version") > schema_version)
    throw StoreFailure({ErrorKind::NewerVersion,
                        fmt::format("The log {} was written by a later version of Rackside. It was "
                                    "left as it is; install that version to open it.",
                                    log),
                        log});
  if (access == Access::Write && version_in(database, "schema_version") > schema_version)
    throw StoreFailure({ErrorKind::NewerVersion,
                        fmt::format("The log {} was written by a later version of Rackside. This "
                                    "one can read it but not add to it; install that version.",
                                    log),
                        log});
}

void refresh_roster_index(const Database& database) {
  Statement known = database.prepare("SELECT sql FROM sqlite_schema WHERE name = ?");
  known.bind(1, std::string_view("events_of_roster"));
  const std::string wanted = roster_index();
  if (known.step() && known.text(0) == wanted) return;
  known.reset();
  Transaction transaction(database);
  database.run("DROP INDEX IF EXISTS events_of_roster; " + wanted);
  transaction.commit();
}

}  // namespace rackside::store
