#include "core/store/own_kiosk.hpp"

#include "core/store/backup.hpp"
#include "core/store/kiosk_lock.hpp"
#include "core/store/log_check.hpp"
#include "core/store/sqlite_log.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

std::unique_ptr<SqliteLog> log_at(const std::filesystem::path& path) {
  return SqliteLog::open(path, Access::Write).value();
}

std::vector<Event> all_of(LogStore& log) {
  std::vector<Event> events;
  REQUIRE(log.read_all([&](Event&& event) { events.push_back(std::move(event)); }));
  return events;
}

// A log with one event and a copy of it, each of which then writes one more.
void write_on(const TemporaryFolder& folder) {
  REQUIRE(log_at(folder / "b.db")->append({make_event(3, 3, animal_number(1), WaterFilled{})}, {}));
  REQUIRE(log_at(folder / "a.db")->append({make_event(2, 2, animal_number(1), Misted{})}, {}));
}
void copy_of_one_event(const TemporaryFolder& folder) {
  REQUIRE(log_at(folder / "a.db")->append({make_event(1, 1, animal_number(1), Misted{})}, {}));
  REQUIRE(back_up(folder / "a.db", folder / "b.db", [](double) { return true; }));
}

}  // namespace

TEST_CASE("two kiosks on copies of one log cannot be merged; with an id of its own they can") {
  const TemporaryFolder folder;
  copy_of_one_event(folder);
  SECTION("as they are") {
    write_on(folder);
    CHECK_FALSE(log_at(folder / "a.db")->merge(all_of(*log_at(folder / "b.db"))));
  }
  SECTION("with an id of its own") {
    REQUIRE(make_own_kiosk(folder / "b.db", kiosk_number(9)));
    write_on(folder);
    const auto merged = log_at(folder / "a.db")->merge(all_of(*log_at(folder / "b.db")));
    REQUIRE(merged);
    CHECK(merged->added == 1);
    CHECK(all_of(*log_at(folder / "a.db")).size() == 3);
    CHECK(check_log(folder / "a.db")->findings.empty());
    CHECK(check_log(folder / "b.db")->findings.empty());
  }
}

TEST_CASE("what the copy writes is its own, with numbers from 1") {
  const TemporaryFolder folder;
  copy_of_one_event(folder);
  REQUIRE(make_own_kiosk(folder / "b.db", kiosk_number(9)));
  const auto log = log_at(folder / "b.db");
  CHECK(log->kiosk() == kiosk_number(9));
  const auto written = log->append({make_event(2, 2, animal_number(1), Misted{})}, {});
  CHECK(written->front().number == 1);
  CHECK(all_of(*log).size() == 2);
}

TEST_CASE("a log on which a kiosk runs keeps its id") {
  const TemporaryFolder folder;
  copy_of_one_event(folder);
  const auto lock = KioskLock::take(folder / "b.db");
  REQUIRE(lock);
  const auto made = make_own_kiosk(folder / "b.db", kiosk_number(9));
  REQUIRE_FALSE(made);
  CHECK(made.error().kind == ErrorKind::Busy);
}
