#include "core/store/log_check.hpp"

#include <sqlite3.h>

#include "core/store/database.hpp"
#include "core/store/sqlite_log.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

struct Made {
  TemporaryFolder folder;
  std::filesystem::path path = folder / "log.db";

  Made() {
    const auto log = SqliteLog::open(path, Access::Write).value();
    for (int i = 1; i <= 5; ++i) {
      Event event = make_event(i, i, animal_number(i), Offered{});
      event.enclosure = tub_number(i);
      REQUIRE(log->append({event}, {}));
    }
  }
  // What only somebody with other tools, or a failing disk, could do.
  void behind_our_back(const std::string& sql) const {
    plainly("DROP TRIGGER events_never_change; DROP TRIGGER events_never_go; " + sql);
  }
  void plainly(const std::string& sql) const {
    store::Database(path, path.string(), SQLITE_OPEN_READWRITE, {}).run(sql);
  }
  [[nodiscard]] std::string findings() const {
    const auto report = check_log(path, CheckDepth::Thorough);
    REQUIRE(report);
    std::string text;
    for (const auto& finding : report->findings) text += finding + "\n";
    return text;
  }
};

}  // namespace

TEST_CASE("a sound log has no findings") {
  const Made made;
  const auto report = check_log(made.path);
  REQUIRE(report);
  CHECK(report->findings.empty());
  CHECK(report->events == 5);
  CHECK(report->kiosks == 1);
}

TEST_CASE("a missing event is found by the numbers") {
  const Made made;
  made.behind_our_back("DELETE FROM events WHERE number = 3");
  CHECK(made.findings().find("Of the 5 events of kiosk") == 0);
}

TEST_CASE("an event that cannot be read is found and named") {
  const Made made;
  made.behind_our_back("UPDATE events SET details = '{\"outcome\":\"nibbled\"}' WHERE number = 2");
  CHECK(made.findings().find("Event 2 cannot be read: outcome cannot be \"nibbled\"") == 0);
}

TEST_CASE("an event of an unknown kiosk is found") {
  const Made made;
  made.behind_our_back("UPDATE events SET kiosk = zeroblob(16), number = 1 WHERE number = 5");
  CHECK(made.findings().find("Row 5 names a kiosk nobody knows.") != std::string::npos);
}

TEST_CASE("an index that lost entries is found") {
  const Made made;
  // An event is written while the index is out of sight.
  made.behind_our_back(
      "PRAGMA writable_schema = ON; CREATE TABLE hidden AS SELECT * FROM sqlite_schema WHERE "
      "name = 'events_by_enclosure'; DELETE FROM sqlite_schema WHERE name = "
      "'events_by_enclosure'");
  made.plainly(
      "INSERT INTO events SELECT 6, randomblob(16), kiosk, 6, \"by\", at, utc_offset, exact, "
      "written, kind, animal, enclosure, details, note FROM events WHERE number = 1");
  made.plainly(
      "PRAGMA writable_schema = ON; INSERT INTO sqlite_schema SELECT * FROM hidden; DROP TABLE "
      "hidden");
  CHECK(made.findings().find("The index events_by_enclosure has 5 entries for 6 events.") !=
        std::string::npos);
}

TEST_CASE("bytes overwritten by a failing disk are found") {
  const Made made;
  std::string content = read_file(made.path);
  const auto place = content.find("offered");
  REQUIRE(place != std::string::npos);
  // The page that holds the events.
  const auto page = static_cast<std::ptrdiff_t>(place / 4096 * 4096);
  std::fill(content.begin() + page, content.begin() + page + 64, '\x33');
  write_file(made.path, content);
  CHECK_FALSE(made.findings().empty());
}
