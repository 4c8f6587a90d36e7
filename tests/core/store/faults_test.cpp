// Disks that are full or fail: what was acknowledged stays, what was not is told as not saved, and
// doing it again is safe.

#include <sqlite3.h>

#include <utility>

#include "core/store/backup.hpp"
#include "core/store/database.hpp"
#include "core/store/log_check.hpp"
#include "core/store/sqlite_log.hpp"
#include "tests/core/store/failing_disk.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

Draft draft(int number) {
  Event event = make_event(number, number, animal_number(1), Offered{});
  event.note = std::string(200, 'n');
  return event;
}

struct Kiosk {
  FailingDisk disk;
  TemporaryFolder folder;
  std::filesystem::path path = folder / "log.db";
  std::unique_ptr<SqliteLog> log =
      SqliteLog::open(path, Access::Write, std::chrono::milliseconds{30}).value();

  Result<std::vector<Event>> append(int number) { return log->append({draft(number)}, {}); }
  std::size_t count() { return log->read_animal(animal_number(1)).value().size(); }
};

}  // namespace

TEST_CASE("on a full disk nothing is saved, nothing is lost, and doing it again works") {
  Kiosk kiosk;
  REQUIRE(kiosk.append(1));
  kiosk.disk.fail_writes_after(0, SQLITE_FULL);
  const auto refused = kiosk.append(2);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().kind == ErrorKind::Full);
  CHECK(refused.error().sentence.find("disk is full") != std::string::npos);
  CHECK(kiosk.count() == 1);
  kiosk.disk.heal();
  REQUIRE(kiosk.append(2));
  CHECK(kiosk.count() == 2);
}

TEST_CASE("a disk that fails at any single write or sync never saves by halves") {
  // Drafts come in threes, so that half a transaction could show.
  const auto three = [](int first) {
    return std::vector{draft(first), draft(first + 1), draft(first + 2)};
  };
  for (const bool writes : {true, false})
    for (int allowed = 0; allowed < 12; ++allowed) {
      INFO((writes ? "writes " : "syncs ") << allowed);
      Kiosk kiosk;
      REQUIRE(kiosk.log->append(three(0), {}));
      if (writes)
        kiosk.disk.fail_writes_after(allowed, SQLITE_IOERR_WRITE);
      else
        kiosk.disk.fail_syncs_after(allowed, SQLITE_IOERR_FSYNC);
      const auto saved = kiosk.log->append(three(3), {});
      if (allowed == 0) CHECK_FALSE(saved);
      if (!saved) CHECK(saved.error().kind == ErrorKind::Broken);
      CHECK(kiosk.count() == (saved ? 6u : 3u));
      kiosk.disk.heal();
      REQUIRE(kiosk.log->append(three(3), {}));
      CHECK(kiosk.count() == 6);
      kiosk.log.reset();
      const auto report = check_log(kiosk.path, CheckDepth::Thorough);
      REQUIRE(report);
      CHECK(report->findings.empty());
      CHECK(report->events == 6);
    }
}

TEST_CASE("every commit waits for the disk") {
  Kiosk kiosk;
  REQUIRE(kiosk.append(1));
  for (int number = 2; number < 10; ++number) {
    const int before = kiosk.disk.syncs();
    REQUIRE(kiosk.append(number));
    CHECK(kiosk.disk.syncs() > before);
  }
}

TEST_CASE("while another program writes, nothing is saved and the sentence says to try again") {
  Kiosk kiosk;
  const store::Database other(kiosk.path, kiosk.path.string(), SQLITE_OPEN_READWRITE, {});
  {
    const store::Transaction transaction(other);
    const auto refused = kiosk.append(1);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().kind == ErrorKind::Busy);
    CHECK(refused.error().sentence.find("again in a moment") != std::string::npos);
    CHECK(kiosk.count() == 0);  // and reading goes on
  }
  CHECK(kiosk.append(1));
}

TEST_CASE("a reader in the middle of the log does not keep a record from being saved") {
  Kiosk kiosk;
  for (int number = 1; number < 50; ++number) REQUIRE(kiosk.append(number));
  const auto reader = SqliteLog::open(kiosk.path, Access::Read).value();
  std::size_t seen = 0;
  REQUIRE(reader->read_all([&](Event&&) {
    if (++seen == 10) CHECK(kiosk.append(99));
  }));
  CHECK(seen == 49);  // the log as it stood when the reading began
  CHECK(kiosk.count() == 50);
}

TEST_CASE("the side file stays small, also after a reader held it up") {
  Kiosk kiosk;
  const auto side_file = [&] { return std::filesystem::file_size(kiosk.path.string() + "-wal"); };
  const auto fill = [&](int first) {
    std::vector<Draft> drafts;
    for (int i = 0; i < 2000; ++i) drafts.push_back(draft(first + i));
    REQUIRE(kiosk.log->append(drafts, {}));
  };
  {
    const auto reader = SqliteLog::open(kiosk.path, Access::Read).value();
    bool filled = false;
    REQUIRE(kiosk.append(1));
    REQUIRE(reader->read_all([&](Event&&) {
      if (std::exchange(filled, true)) return;
      for (int i = 0; i < 10; ++i) fill(2 + i * 2000);
    }));
  }
  CHECK(side_file() > 8 * 1024 * 1024);  // or the test shows nothing
  REQUIRE(kiosk.log->tidy());
  REQUIRE(kiosk.append(100'000));
  REQUIRE(kiosk.append(100'001));
  CHECK(side_file() <= 8 * 1024 * 1024);
}

TEST_CASE("a backup onto a full disk leaves no half of one") {
  Kiosk kiosk;
  REQUIRE(kiosk.append(1));
  kiosk.disk.fail_writes_after(3, SQLITE_FULL);
  const auto end = back_up(kiosk.path, kiosk.folder / "copy.db", [](double) { return true; });
  REQUIRE_FALSE(end.has_value());
  CHECK(end.error().kind == ErrorKind::Full);
  CHECK_FALSE(std::filesystem::exists(kiosk.folder / "copy.db"));
  CHECK_FALSE(std::filesystem::exists(kiosk.folder / "copy.db.unfinished"));
}

TEST_CASE("a new log on a full disk is told, and comes about when there is room") {
  FailingDisk disk;
  const TemporaryFolder folder;
  disk.fail_writes_after(2, SQLITE_FULL);
  const auto refused = SqliteLog::open(folder / "log.db", Access::Write);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().kind == ErrorKind::Full);
  disk.heal();
  CHECK(SqliteLog::open(folder / "log.db", Access::Write));
}
