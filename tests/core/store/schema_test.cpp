#include "core/store/schema.hpp"

#include <sqlite3.h>

#include "core/collection/collection.hpp"
#include "core/store/sqlite_log.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;
using store::Database;
using store::Statement;

namespace {

// A log with three events, and a second, plain connection to its file.
struct Opened {
  TemporaryFolder folder;
  std::unique_ptr<SqliteLog> log = SqliteLog::open(folder / "log.db", Access::Write).value();
  Database file{folder / "log.db", (folder / "log.db").string(), SQLITE_OPEN_READWRITE, {}};

  Opened() {
    for (int i = 1; i <= 3; ++i) {
      Event event = make_event(i, i, animal_number(1), Misted{});
      event.enclosure = tub_number(1);
      REQUIRE(log->append({event}, event.written));
    }
  }
  [[nodiscard]] bool refuses(const std::string& sql) const {
    return sqlite3_exec(file.handle(), sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK;
  }
  [[nodiscard]] std::string plan(const std::string& sql) const {
    Statement explain = file.prepare("EXPLAIN QUERY PLAN " + sql);
    std::string text;
    while (explain.step()) text += std::string(explain.text(3)) + "\n";
    return text;
  }
};

}  // namespace

TEST_CASE("the file itself refuses to change or delete an event") {
  const Opened opened;
  CHECK(opened.refuses("UPDATE events SET note = 'never happened'"));
  CHECK(opened.refuses("DELETE FROM events WHERE number = 2"));
  CHECK(opened.refuses("UPDATE kiosks SET id = zeroblob(16)"));
  CHECK(opened.refuses("DELETE FROM kiosks"));
  CHECK(opened.file.integer("SELECT count(*) FROM events WHERE note = ''") == 3);
}

TEST_CASE("the file itself refuses rows that no program of ours would write") {
  const Opened opened;
  opened.file.run("PRAGMA foreign_keys = ON");
  const std::string insert =
      "INSERT INTO events (id, kiosk, number, \"by\", at, utc_offset, exact, written, kind, "
      "details, note) SELECT ";
  const std::string rest = ", '', 0, 0, 1, 0, 'misted', '{}', '' FROM kiosks";
  CHECK_FALSE(opened.refuses(insert + "zeroblob(16), id, 4" + rest));
  CHECK(opened.refuses(insert + "zeroblob(16), id, 5" + rest));                // the id again
  CHECK(opened.refuses(insert + "randomblob(16), id, 4" + rest));              // the number again
  CHECK(opened.refuses(insert + "randomblob(15), id, 5" + rest));              // no id
  CHECK(opened.refuses(insert + "randomblob(16), id, 0" + rest));              // no number
  CHECK(opened.refuses(insert + "randomblob(16), id, 'many'" + rest));         // STRICT
  CHECK(opened.refuses(insert + "randomblob(16), randomblob(16), 5" + rest));  // foreign key
}

TEST_CASE("the file says whose it is and of which version") {
  const Opened opened;
  CHECK(opened.file.integer("PRAGMA application_id") == store::application_id);
  CHECK(opened.file.integer("PRAGMA user_version") == store::schema_version);
  CHECK(opened.file.integer("SELECT value FROM meta WHERE name = 'minimum_reader_version'") ==
        store::minimum_reader_version);
  Statement mode = opened.file.prepare("PRAGMA journal_mode");
  REQUIRE(mode.step());
  CHECK(mode.text(0) == "wal");
}

TEST_CASE("reading an animal, a tub or the roster goes through an index and sorts nothing") {
  const Opened opened;
  for (const auto& [where, index] : std::vector<std::pair<std::string, std::string>>{
           {"animal = zeroblob(16)", "events_by_animal"},
           {"enclosure = 'T0000000'", "events_by_enclosure"},
           {store::roster_condition(), "events_of_roster"}}) {
    const auto plan = opened.plan("SELECT * FROM events WHERE " + where + " ORDER BY at, id");
    INFO(plan);
    CHECK(plan.find(index) != std::string::npos);
    CHECK(plan.find("TEMP B-TREE") == std::string::npos);
  }
}

TEST_CASE("an index for an older list of roster kinds is made anew") {
  const TemporaryFolder folder;
  const auto path = folder / "log.db";
  REQUIRE(SqliteLog::open(path, Access::Write));
  const Database file(path, path.string(), SQLITE_OPEN_READWRITE, {});
  file.run(
      "DROP INDEX events_of_roster; CREATE INDEX events_of_roster ON events (at, id) "
      "WHERE kind IN ('levitated')");
  REQUIRE(SqliteLog::open(path, Access::Write));
  Statement index = file.prepare("SELECT sql FROM sqlite_schema WHERE name = 'events_of_roster'");
  REQUIRE(index.step());
  CHECK(std::string(index.text(0)).find("animal added") != std::string::npos);
}
