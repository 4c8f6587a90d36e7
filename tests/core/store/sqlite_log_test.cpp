#include "core/store/sqlite_log.hpp"

#include <algorithm>

#include "core/collection/collection.hpp"
#include "tests/fakes/memory_log_store.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

std::unique_ptr<SqliteLog> open_log(const std::filesystem::path& path,
                                    Access access = Access::Write) {
  auto log = SqliteLog::open(path, access);
  REQUIRE(log);
  return *std::move(log);
}

std::vector<Draft> drafts_of(const std::vector<Event>& events) {
  return {events.begin(), events.end()};
}

std::vector<Event> everything(LogStore& log) {
  std::vector<Event> events;
  REQUIRE(log.read_all([&](Event&& event) { events.push_back(std::move(event)); }));
  return events;
}

// Everything the port can be asked, as one value.
struct Answers {
  std::vector<Event> all;
  std::vector<std::vector<Event>> some;
  bool operator==(const Answers&) const = default;
};

Answers ask(LogStore& log) {
  Answers answers{everything(log), {}};
  for (int i = 0; i < 6; ++i) answers.some.push_back(log.read_animal(animal_number(i)).value());
  for (int i = 0; i < 6; ++i) answers.some.push_back(log.read_enclosure(tub_number(i)).value());
  answers.some.push_back(log.read_kinds(roster_kinds()).value());
  answers.some.push_back(log.read_kinds({"offered", "retracted", "levitated"}).value());
  answers.some.push_back(log.read_kinds({}).value());
  std::int64_t position = 0;
  for (int i = 0; i < 40; ++i) answers.some.push_back(log.read_written_after(position, 7).value());
  return answers;
}

}  // namespace

TEST_CASE("what was appended is read back as it was, by this and by the next opening") {
  rc::prop("append and read", [] {
    const TemporaryFolder folder;
    const auto drafts = drafts_of(*any_log(30));
    std::vector<Event> appended;
    {
      const auto log = open_log(folder / "log.db");
      appended = log->append(drafts, at_hour(500).moment.utc).value();
    }
    RC_ASSERT(drafts_of(appended) == drafts);
    const auto log = open_log(folder / "log.db", Access::Read);
    std::int64_t position = 0;
    RC_ASSERT(log->read_written_after(position, 1000).value() == appended);
    for (std::size_t i = 0; i < appended.size(); ++i) {
      RC_ASSERT(appended[i].number == static_cast<std::int64_t>(i + 1));
      RC_ASSERT(appended[i].kiosk == log->kiosk());
      RC_ASSERT(appended[i].written == at_hour(500).moment.utc);
    }
  });
}

TEST_CASE("the log in the file and the one in memory give the same answers") {
  rc::prop("appended in pieces, some of them twice, and merged", [] {
    const TemporaryFolder folder;
    const auto file = open_log(folder / "log.db");
    MemoryLogStore memory(file->kiosk());
    const auto events = *any_log(40);
    const std::size_t middle = *rc::gen::inRange<std::size_t>(0, events.size() + 1);
    const auto at = events.begin() + static_cast<std::ptrdiff_t>(middle);
    const std::vector<Event> theirs(events.begin(), at);
    const std::vector<Draft> ours(at, events.end());
    for (LogStore* log : {static_cast<LogStore*>(file.get()), static_cast<LogStore*>(&memory)}) {
      RC_ASSERT(log->append(ours, at_hour(400).moment.utc).has_value());
      RC_ASSERT(log->append(ours, at_hour(401).moment.utc).has_value());
    }
    RC_ASSERT(file->merge(theirs).value() == memory.merge(theirs).value());
    RC_ASSERT(file->merge(theirs).value() == memory.merge(theirs).value());
    // Ours stand under another kiosk's name in here.
    RC_ASSERT(file->merge(events).has_value() == memory.merge(events).has_value());
    RC_ASSERT(ask(*file) == ask(memory));
  });
}

TEST_CASE("a draft that was written already is given back as it stands") {
  const TemporaryFolder folder;
  const auto log = open_log(folder / "log.db");
  const Draft draft = make_event(1, 1, animal_number(1), Misted{});
  const auto first = log->append({draft}, at_hour(1).moment.utc).value();
  const auto again = log->append({draft, draft}, at_hour(2).moment.utc).value();
  REQUIRE(again.size() == 2);
  CHECK(again[0] == first[0]);
  CHECK(again[1] == first[0]);
  CHECK(everything(*log).size() == 1);
  CHECK(log->append({make_event(2, 2, animal_number(1), Misted{})}, at_hour(3).moment.utc)
            .value()[0]
            .number == 2);
}

TEST_CASE("two logs merged either way round hold the same events") {
  rc::prop("set union in any order, in any portions", [] {
    const TemporaryFolder folder;
    const auto events = *any_log(40);
    auto shuffled = events;
    std::mt19937 random(*rc::gen::arbitrary<unsigned>());
    std::shuffle(shuffled.begin(), shuffled.end(), random);
    const auto one = open_log(folder / "one.db");
    const auto other = open_log(folder / "other.db");
    RC_ASSERT(one->merge(events)->added == static_cast<std::int64_t>(events.size()));
    for (const Event& event : shuffled) RC_ASSERT(other->merge({event})->added == 1);
    RC_ASSERT(other->merge(events)->present == static_cast<std::int64_t>(events.size()));
    RC_ASSERT(everything(*one) == everything(*other));
    RC_ASSERT(fold_collection(everything(*one)) == fold_collection(events));
  });
}

TEST_CASE("a merge in which one id stands for two events takes over nothing") {
  const TemporaryFolder folder;
  const auto log = open_log(folder / "log.db");
  Event event = make_event(1, 1, animal_number(1), Misted{});
  REQUIRE(log->merge({event}));
  event.note = "another story";
  const auto merged = log->merge({make_event(2, 2, animal_number(1), Misted{}), event});
  REQUIRE_FALSE(merged);
  CHECK(merged.error().kind == ErrorKind::BadInput);
  CHECK(everything(*log).size() == 1);
}

TEST_CASE("a merge in which one kiosk's number stands for two events takes over nothing") {
  const TemporaryFolder folder;
  const auto log = open_log(folder / "log.db");
  Event event = make_event(1, 1, animal_number(1), Misted{});
  REQUIRE(log->merge({event}));
  event.id = event_number(99);
  const auto merged = log->merge({event});
  REQUIRE_FALSE(merged);
  CHECK(merged.error().kind == ErrorKind::BadInput);
  CHECK(everything(*log).size() == 1);
}

TEST_CASE("numbers go on after the largest of this kiosk, merged ones included") {
  const TemporaryFolder folder;
  const auto log = open_log(folder / "log.db");
  Event own = make_event(1, 1, animal_number(1), Misted{});
  own.kiosk = log->kiosk();
  own.number = 1;
  Event other = make_event(2, 1, animal_number(1), Misted{});
  other.number = 70;
  REQUIRE(log->merge({own, other}));
  const auto appended =
      log->append({make_event(3, 1, animal_number(1), Misted{})}, at_hour(3).moment.utc);
  CHECK(appended.value()[0].number == 2);
}

TEST_CASE("words with marks, line breaks and nothing at all survive") {
  const TemporaryFolder folder;
  const auto log = open_log(folder / "log.db");
  Event event = make_event(1, 1, animal_number(1), Noted{});
  event.note = std::string("a\0b\n\"c\"; DROP TABLE events; -- \xF0\x9F\x95\xB7", 36);
  event.by = "";
  const auto read = log->append({event}, at_hour(1).moment.utc);
  CHECK(log->read_animal(animal_number(1)).value() == *read);
  CHECK(log->read_animal(animal_number(1)).value()[0].note == event.note);
}
