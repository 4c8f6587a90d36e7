#include "core/program/taking_turns.hpp"

#include "tests/fakes/memory_log_store.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::program;
using namespace rackside::tests;

namespace {

/// A log whose disk fills up after so many pieces.
class FillingLog : public MemoryLogStore {
 public:
  explicit FillingLog(int pieces) : MemoryLogStore(kiosk_number(1)), pieces_(pieces) {}
  Result<std::vector<Event>> append(const std::vector<Draft>& drafts, Instant now) override {
    largest = std::max(largest, drafts.size());
    if (pieces_-- == 0) fail_next_write({ErrorKind::Full, "The disk is full.", {}});
    return MemoryLogStore::append(drafts, now);
  }
  std::size_t largest = 0;

 private:
  int pieces_;
};

std::vector<Draft> drafts(std::size_t count) {
  std::vector<Draft> list;
  for (std::size_t i = 0; i < count; ++i)
    list.push_back(make_event(static_cast<std::int64_t>(i), 1, animal_number(1), Misted{}));
  return list;
}

std::size_t events_in(LogStore& log) {
  std::size_t count = 0;
  REQUIRE(log.read_all([&](Event&&) { ++count; }));
  return count;
}

}  // namespace

TEST_CASE("a long import is written in pieces, and all of it") {
  FillingLog log(99);
  REQUIRE(append_in_turns(log, drafts(2 * events_at_once + 5), {}));
  CHECK(events_in(log) == 2 * events_at_once + 5);
  CHECK(log.largest == events_at_once);
}

TEST_CASE("an import that breaks off says what is there, and goes on when it is repeated") {
  FillingLog log(1);
  const auto all = drafts(2 * events_at_once);
  const auto broken = append_in_turns(log, all, {});
  REQUIRE_FALSE(broken);
  CHECK(broken.error().kind == ErrorKind::Full);
  CHECK(broken.error().sentence.find("4000 of 8000 events are in the log") != std::string::npos);
  REQUIRE(append_in_turns(log, all, {}));
  CHECK(events_in(log) == all.size());
}

TEST_CASE("an import that cannot begin says only why") {
  FillingLog log(0);
  CHECK(append_in_turns(log, drafts(3), {}).error().sentence == "The disk is full.");
  CHECK(events_in(log) == 0);
}
