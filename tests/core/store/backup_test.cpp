#include "core/store/backup.hpp"

#include "core/store/log_check.hpp"
#include "core/store/sqlite_log.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

std::vector<Draft> many(int first, int count) {
  std::vector<Draft> drafts;
  for (int i = first; i < first + count; ++i)
    drafts.push_back(make_event(i, i, animal_number(i % 7), Misted{}));
  return drafts;
}

std::unique_ptr<SqliteLog> log_at(const std::filesystem::path& path) {
  return SqliteLog::open(path, Access::Write).value();
}

const BackupProgress go_on = [](double) { return true; };

}  // namespace

TEST_CASE("a backup holds the log as it stood when the copying began") {
  const TemporaryFolder folder;
  const auto log = log_at(folder / "log.db");
  REQUIRE(log->append(many(0, 20000), {}));
  double last = 0;
  int steps = 0;
  const auto end = back_up(folder / "log.db", folder / "copy.db", [&](double share) {
    CHECK(share >= last);
    last = share;
    ++steps;
    // The kiosk goes on recording meanwhile.
    CHECK(log->append(many(20000 + steps, 1), {}));
    return true;
  });
  REQUIRE(end.has_value());
  CHECK(*end == BackupEnd::Finished);
  CHECK(last == 1.0);
  CHECK(steps > 1);
  const auto report = check_log(folder / "copy.db", CheckDepth::Thorough);
  REQUIRE(report);
  CHECK(report->findings.empty());
  CHECK(report->events == 20000);
  CHECK(log_at(folder / "copy.db")->kiosk() == log->kiosk());
}

TEST_CASE("a backup never takes the place of a file that is there") {
  const TemporaryFolder folder;
  const auto log = log_at(folder / "log.db");
  write_file(folder / "copy.db", "the only photograph");
  const auto end = back_up(folder / "log.db", folder / "copy.db", go_on);
  REQUIRE_FALSE(end.has_value());
  CHECK(end.error().kind == ErrorKind::NotNow);
  CHECK(read_file(folder / "copy.db") == "the only photograph");
  CHECK_FALSE(back_up(folder / "log.db", folder / "log.db", go_on).has_value());
}

TEST_CASE("a backup that is stopped or cannot be made leaves nothing behind") {
  const TemporaryFolder folder;
  const auto log = log_at(folder / "log.db");
  REQUIRE(log->append(many(0, 20000), {}));
  std::filesystem::create_directory(folder / "stick");
  const auto stopped =
      back_up(folder / "log.db", folder / "stick/copy.db", [](double) { return false; });
  CHECK(stopped == BackupEnd::Stopped);
  CHECK(std::filesystem::is_empty(folder / "stick"));
  CHECK(back_up(folder / "none.db", folder / "stick/copy.db", go_on).error().kind ==
        ErrorKind::NotFound);
  CHECK(std::filesystem::is_empty(folder / "stick"));
  CHECK(back_up(folder / "log.db", folder / "nowhere/copy.db", go_on).error().kind ==
        ErrorKind::NotFound);
}
