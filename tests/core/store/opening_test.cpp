// What can be in the place of a log, and what the keeper is told.

#include <sqlite3.h>
#include <sys/stat.h>
#include <sys/wait.h>

#include "core/store/database.hpp"
#include "core/store/kiosk_lock.hpp"
#include "core/store/sqlite_log.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;
namespace fs = std::filesystem;

namespace {

void check_refused(const fs::path& path, Access access, ErrorKind kind, const std::string& words) {
  const auto log = SqliteLog::open(path, access, std::chrono::milliseconds{50});
  REQUIRE_FALSE(log);
  INFO(log.error().sentence);
  CHECK(log.error().kind == kind);
  CHECK(log.error().sentence.find(words) != std::string::npos);
}

void make_log(const fs::path& path) {
  const auto log = SqliteLog::open(path, Access::Write);
  REQUIRE(log);
  REQUIRE((*log)->append({make_event(1, 1, animal_number(1), Misted{})}, {}));
}

void set_meta(const fs::path& path, const std::string& name, int value) {
  const store::Database file(path, path.string(), SQLITE_OPEN_READWRITE, {});
  file.run("UPDATE meta SET value = " + std::to_string(value) + " WHERE name = '" + name + "'");
}

// Runs `work` as a user whom file permissions bind: root's tests would pass through them.
template <class Work>
int as_somebody(const Work& work) {
  const pid_t child = fork();
  if (child == 0) {
    if (geteuid() == 0 && (setgid(65534) != 0 || setuid(65534) != 0)) _exit(99);
    _exit(work());
  }
  int status = 0;
  waitpid(child, &status, 0);
  return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

int kind_of_opening(const fs::path& path, Access access) {
  const auto log = SqliteLog::open(path, access, std::chrono::milliseconds{50});
  if (log) return (*log)->read_animal(animal_number(1)).value().size() == 1 ? 50 : 51;
  return static_cast<int>(log.error().kind);
}

}  // namespace

TEST_CASE("a file that is no log is left as it is") {
  const TemporaryFolder folder;
  for (const std::string& content : {std::string("when,animal,event\n"), std::string("x"),
                                     std::string(5000, 'x'), std::string("\x89PNG\r\n\x1a\n")}) {
    write_file(folder / "notes.txt", content);
    INFO(content);
    check_refused(folder / "notes.txt", Access::Read, ErrorKind::NotOurs, "not a Rackside log");
    check_refused(folder / "notes.txt", Access::Write, ErrorKind::NotOurs, "left as it is");
    CHECK(read_file(folder / "notes.txt") == content);
  }
}

TEST_CASE("another program's database is left as it is") {
  const TemporaryFolder folder;
  const auto path = folder / "recipes.db";
  {
    const store::Database other(path, path.string(), SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE,
                                {});
    other.run("CREATE TABLE recipes (name)");
  }
  const std::string before = read_file(path);
  check_refused(path, Access::Read, ErrorKind::NotOurs, "not a Rackside log");
  check_refused(path, Access::Write, ErrorKind::NotOurs, "not a Rackside log");
  CHECK(read_file(path) == before);
}

TEST_CASE("an empty file becomes a log when it may be written to") {
  const TemporaryFolder folder;
  write_file(folder / "log.db", "");
  check_refused(folder / "log.db", Access::Read, ErrorKind::NotOurs, "not a Rackside log");
  make_log(folder / "log.db");
}

TEST_CASE("no folder, no log and a folder in its place are told apart") {
  const TemporaryFolder folder;
  check_refused(folder / "nowhere/log.db", Access::Write, ErrorKind::NotFound, "no folder");
  check_refused(folder / "nowhere/log.db", Access::Read, ErrorKind::NotFound, "no folder");
  check_refused(folder / "log.db", Access::Read, ErrorKind::NotFound, "There is no log at");
  check_refused(folder.path(), Access::Write, ErrorKind::NotOurs, "is a folder");
  CHECK(fs::is_empty(folder.path()));
}

TEST_CASE("a log of a later version is not opened, or only read, as it demands") {
  const TemporaryFolder folder;
  make_log(folder / "log.db");
  set_meta(folder / "log.db", "schema_version", 7);
  check_refused(folder / "log.db", Access::Write, ErrorKind::NewerVersion, "later version");
  CHECK(SqliteLog::open(folder / "log.db", Access::Read));
  set_meta(folder / "log.db", "minimum_reader_version", 7);
  check_refused(folder / "log.db", Access::Read, ErrorKind::NewerVersion, "later version");
  check_refused(folder / "log.db", Access::Write, ErrorKind::NewerVersion, "later version");
}

TEST_CASE("a damaged log says so and is not touched") {
  const TemporaryFolder folder;
  make_log(folder / "log.db");
  std::string content = read_file(folder / "log.db");
  std::fill(content.begin() + 100, content.begin() + 4096, '\x5a');
  write_file(folder / "log.db", content);
  check_refused(folder / "log.db", Access::Write, ErrorKind::Broken, "is damaged");
  check_refused(folder / "log.db", Access::Read, ErrorKind::Broken, "last backup");
  CHECK(read_file(folder / "log.db") == content);
}

TEST_CASE("a log cut short says so when it is read") {
  const TemporaryFolder folder;
  make_log(folder / "log.db");
  fs::resize_file(folder / "log.db", 3 * 4096);
  const auto log = SqliteLog::open(folder / "log.db", Access::Read);
  const auto events = log ? (*log)->read_animal(animal_number(1))
                          : Result<std::vector<Event>>(tl::unexpected(log.error()));
  REQUIRE_FALSE(events);
  CHECK(events.error().kind == ErrorKind::Broken);
}

TEST_CASE("a log that may only be read is read, and not written to") {
  const TemporaryFolder folder;
  make_log(folder / "log.db");
  chmod(folder.path().c_str(), 0755);
  chmod((folder / "log.db").c_str(), 0444);
  const auto path = folder / "log.db";
  CHECK(as_somebody([&] { return kind_of_opening(path, Access::Write); }) ==
        static_cast<int>(ErrorKind::ReadOnly));
  CHECK(as_somebody([&] { return kind_of_opening(path, Access::Read); }) == 50);
}

TEST_CASE("in a folder that cannot be written to there is no new log and no kiosk") {
  const TemporaryFolder folder;
  chmod(folder.path().c_str(), 0555);
  const auto path = folder / "log.db";
  CHECK(as_somebody([&] { return kind_of_opening(path, Access::Write); }) ==
        static_cast<int>(ErrorKind::ReadOnly));
  CHECK(as_somebody([&] { return static_cast<int>(KioskLock::take(path).error().kind); }) ==
        static_cast<int>(ErrorKind::ReadOnly));
}

TEST_CASE("names with marks in them are only names") {
  const TemporaryFolder folder;
  for (const char* name : {"what?.db", "100%41.db", "a#b.db", "with blank.db"}) {
    make_log(folder / name);
    const auto log = SqliteLog::open(folder / name, Access::Read);
    REQUIRE(log);
    CHECK((*log)->read_animal(animal_number(1)).value().size() == 1);
  }
}
