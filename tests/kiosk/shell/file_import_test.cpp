// Records that are brought in part by part, with taps between the parts.

#include "kiosk/shell/file_import.hpp"

#include <fmt/format.h>

#include "tests/fakes/fixed_clock.hpp"
#include "tests/fakes/mailbox.hpp"
#include "tests/fakes/memory_log_store.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

// A log that says when something is written to it.
class WatchedLog : public MemoryLogStore {
 public:
  using MemoryLogStore::MemoryLogStore;
  std::function<void(std::size_t drafts)> written = [](std::size_t) {};
  Result<std::vector<Event>> append(const std::vector<Draft>& drafts, Instant now) override {
    auto events = MemoryLogStore::append(drafts, now);
    written(drafts.size());
    return events;
  }
};

struct Desk {
  TemporaryFolder folder;
  FixedClock clock{at_hour(24 * 40).moment};
  CountingIds ids{1'000'000}, reading_ids{2'000'000};
  WatchedLog log{kiosk_number(1)};
  Mailbox mailbox;
  std::vector<std::size_t> writes;  // how many drafts at once
  JobThread writing, reading;
  FileImport import{{reading, log, reading_ids}, {writing, log, ids}, clock, mailbox.queue};

  Desk() {
    REQUIRE(log.append({Draft{.id = event_number(1),
                              .when = at_hour(0),
                              .animal = animal_number(1),
                              .enclosure = tub_number(1),
                              .details = AnimalAdded{.key = "a"}}},
                       {}));
    std::string rows = "when,animal,event\n";
    const Day first = at_hour(0).moment.day();
    for (std::size_t i = 0; i < 3 * import_part; ++i)
      rows += fmt::format("{}T{:02}:{:02}+00:00,a,misted\n",
                          format_day(first + std::chrono::days{1 + i / 1440}), i / 60 % 24, i % 60);
    write_file(folder / "events.csv", rows);
    log.written = [this](std::size_t drafts) {
      writes.push_back(drafts);
      if (const auto then = std::exchange(after_next, {})) then();
    };
  }
  ~Desk() {
    reading.finish();
    writing.finish();
  }
  std::function<void()> after_next;  // on the writing thread, when it has written once more

  BroughtIn write_all() {
    import.write((folder / "events.csv").string());
    return mailbox.wait_for<BroughtIn>();
  }
  // As when somebody taps a tile.
  void tap() {
    writing.add([this] {
      const Draft draft{.id = event_number(2),
                        .when = at_hour(1),
                        .animal = animal_number(1),
                        .enclosure = tub_number(1),
                        .details = Misted{}};
      REQUIRE(log.append({draft}, {}));
    });
  }
};

}  // namespace

TEST_CASE("a tap during an import is saved after the part that is being written") {
  Desk desk;
  desk.after_next = [&] { desk.tap(); };
  const auto brought = desk.write_all();
  CHECK_FALSE(brought.problem);
  CHECK(brought.so_far == WrittenSoFar{3 * import_part, 3 * import_part});
  CHECK(desk.writes == std::vector<std::size_t>{import_part, 1, import_part, import_part});
}

TEST_CASE("a disk that is full half-way leaves the parts that were written, and says how many") {
  Desk desk;
  const Error full{ErrorKind::Full, "The card is full.", {}};
  desk.after_next = [&] { desk.log.fail_next_write(full); };
  const auto brought = desk.write_all();
  CHECK(brought.problem == full);
  CHECK(brought.so_far == WrittenSoFar{import_part, 3 * import_part});
}

TEST_CASE("a stopped import keeps what is written and goes on there the next time") {
  Desk desk;
  desk.after_next = [&] { desk.import.stop(); };
  CHECK(desk.write_all().so_far == WrittenSoFar{import_part, 3 * import_part});
  CHECK(desk.write_all().so_far == WrittenSoFar{2 * import_part, 2 * import_part});
  CHECK(desk.log.read_animal(animal_number(1)).value().size() == 1 + 3 * import_part);
}
