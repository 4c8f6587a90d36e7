// Several processes on one log, and processes that die.

#include <signal.h>
#include <sys/wait.h>

#include <thread>
#include <unordered_set>

#include "core/clock/system_clock.hpp"
#include "core/clock/system_ids.hpp"
#include "core/store/log_check.hpp"
#include "core/store/sqlite_log.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

// Appends one event after another and tells each id once it was acknowledged. In a child process.
[[noreturn]] void append_and_tell(const std::filesystem::path& path, int pipe_end, int most) {
  const auto log = SqliteLog::open(path, Access::Write, std::chrono::seconds{20});
  if (!log) _exit(2);
  SystemClock clock;
  SystemIds ids(clock);
  for (int i = 0; i < most; ++i) {
    Event event = make_event(1, i, animal_number(1), Offered{});
    event.id = ids.next_event();
    if (!(*log)->append({event}, clock.now().utc)) _exit(3);
    if (write(pipe_end, event.id.value.bytes.data(), 16) != 16) _exit(4);
  }
  _exit(0);
}

struct Child {
  pid_t process = -1;
  int acknowledgements = -1;
};

Child start_child(const std::filesystem::path& path, int most) {
  int ends[2];
  REQUIRE(pipe(ends) == 0);
  const pid_t process = fork();
  if (process == 0) append_and_tell(path, ends[1], most);
  close(ends[1]);
  return {process, ends[0]};
}

std::vector<EventId> acknowledged(Child child) {
  std::vector<EventId> ids;
  for (EventId id; read(child.acknowledgements, id.value.bytes.data(), 16) == 16;)
    ids.push_back(id);
  close(child.acknowledgements);
  return ids;
}

int end_of(Child child) {
  int status = 0;
  waitpid(child.process, &status, 0);
  return status;
}

void check_all_there(const std::filesystem::path& path, const std::vector<EventId>& ids) {
  const auto report = check_log(path, CheckDepth::Thorough);
  REQUIRE(report);
  for (const auto& finding : report->findings) UNSCOPED_INFO(finding);
  CHECK(report->findings.empty());
  const auto log = SqliteLog::open(path, Access::Write).value();
  std::unordered_set<EventId> there;
  const auto events = log->read_animal(animal_number(1));
  for (const Event& event : events.value()) there.insert(event.id);
  for (const EventId& id : ids) CHECK(there.contains(id));
}

}  // namespace

TEST_CASE("whatever was acknowledged before a kill is in the log, and no number is missing") {
  const TemporaryFolder folder;
  REQUIRE(SqliteLog::open(folder / "log.db", Access::Write));
  std::vector<EventId> all;
  for (int round = 0; round < 12; ++round) {
    const Child child = start_child(folder / "log.db", 1'000'000);
    std::this_thread::sleep_for(std::chrono::milliseconds{20 + 7 * round});
    kill(child.process, SIGKILL);
    CHECK(WIFSIGNALED(end_of(child)));
    const auto ids = acknowledged(child);
    all.insert(all.end(), ids.begin(), ids.end());
    check_all_there(folder / "log.db", all);
  }
  CHECK(all.size() > 12);  // or the test shows nothing
}

TEST_CASE("a program killed while it makes the log leaves one that opens") {
  for (int round = 0; round < 15; ++round) {
    const TemporaryFolder folder;
    const Child child = start_child(folder / "log.db", 1'000'000);
    std::this_thread::sleep_for(std::chrono::microseconds{800 * round});
    kill(child.process, SIGKILL);
    CHECK(WIFSIGNALED(end_of(child)));
    const auto ids = acknowledged(child);
    REQUIRE(SqliteLog::open(folder / "log.db", Access::Write));
    check_all_there(folder / "log.db", ids);
  }
}

TEST_CASE("two processes write to one log at once, and it holds what both said") {
  const TemporaryFolder folder;
  const Child one = start_child(folder / "log.db", 150);
  const Child other = start_child(folder / "log.db", 150);
  auto ids = acknowledged(one);
  const auto more = acknowledged(other);
  CHECK(WEXITSTATUS(end_of(one)) == 0);
  CHECK(WEXITSTATUS(end_of(other)) == 0);
  ids.insert(ids.end(), more.begin(), more.end());
  CHECK(ids.size() == 300);
  check_all_there(folder / "log.db", ids);
}
