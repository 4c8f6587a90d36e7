#include "core/store/kiosk_lock.hpp"

#include <sys/wait.h>

#include "core/store/sqlite_log.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;

TEST_CASE("a second kiosk on the same log is told so, whatever way the log is named") {
  const TemporaryFolder folder;
  const auto first = KioskLock::take(folder / "log.db");
  REQUIRE(first);
  for (const auto& name : {folder / "log.db", folder / "./log.db"}) {
    const auto second = KioskLock::take(name);
    REQUIRE_FALSE(second);
    CHECK(second.error().kind == ErrorKind::Busy);
    CHECK(second.error().sentence.find("Another kiosk") == 0);
  }
  CHECK(KioskLock::take(folder / "other.db"));
}

TEST_CASE("the lock goes with its kiosk") {
  const TemporaryFolder folder;
  { REQUIRE(KioskLock::take(folder / "log.db")); }
  CHECK(KioskLock::take(folder / "log.db"));
}

TEST_CASE("a kiosk that was killed leaves no lock behind") {
  const TemporaryFolder folder;
  const pid_t child = fork();
  if (child == 0) {
    const auto lock = KioskLock::take(folder / "log.db");
    if (!lock) _exit(1);
    kill(getpid(), SIGKILL);
  }
  int status = 0;
  waitpid(child, &status, 0);
  REQUIRE(WIFSIGNALED(status));
  CHECK(KioskLock::take(folder / "log.db"));
}

TEST_CASE("other programs work on the log beside the kiosk") {
  const TemporaryFolder folder;
  const auto lock = KioskLock::take(folder / "log.db");
  REQUIRE(lock);
  CHECK(SqliteLog::open(folder / "log.db", Access::Write));
  CHECK(SqliteLog::open(folder / "log.db", Access::Read));
}

TEST_CASE("there is no lock where there is no folder") {
  const TemporaryFolder folder;
  CHECK(KioskLock::take(folder / "nowhere/log.db").error().kind == ErrorKind::NotFound);
}
