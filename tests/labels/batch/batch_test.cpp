#include "labels/batch/batch.hpp"

#include <algorithm>
#include <set>

#include "labels/batch/counting_up.hpp"
#include "labels/batch/label_contents.hpp"
#include "tests/fakes/fixed_clock.hpp"
#include "tests/fakes/memory_log_store.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

const Moment evening = at_hour(20).moment;

BatchRequest pulled_sac(int count = 180) {
  return {.species = "Neoholothele incei",
          .source = "sac 31-4",
          .instar = 1,
          .date = parse_day("2031-01-01").value(),
          .count = count,
          .first = {"A", "2", "01"},
          .by = "Ines"};
}

struct Kiosk {
  explicit Kiosk(int number)
      : log(kiosk_number(number)), ids(1000 * static_cast<std::uint64_t>(number)) {}
  MemoryLogStore log;
  CountingIds ids;
  FixedClock clock{evening};

  Result<Batch> make(const BatchRequest& request) { return make_batch(log, request, ids, clock); }
  Collection collection() { return fold_collection(log.read_kinds(roster_kinds()).value()); }
};

std::vector<Event> everything(LogStore& log) {
  std::vector<Event> events;
  REQUIRE(log.read_all([&](Event&& event) { events.push_back(std::move(event)); }));
  return events;
}

// A second program that writes at the worst moment: just before the first one does.
class Interloper : public MemoryLogStore {
 public:
  using MemoryLogStore::MemoryLogStore;
  std::vector<Draft> before_next_append;

  Result<std::vector<Event>> append(const std::vector<Draft>& drafts, Instant now) override {
    if (const auto first = std::exchange(before_next_append, {}); !first.empty())
      REQUIRE(MemoryLogStore::append(first, now));
    return MemoryLogStore::append(drafts, now);
  }
};

}  // namespace

TEST_CASE("a pulled sac becomes tubs and slings that are in the log") {
  Kiosk kiosk(1);
  const auto batch = kiosk.make(pulled_sac());
  REQUIRE(batch);
  CHECK(batch->tubs.size() == 180);
  const Collection collection = kiosk.collection();
  CHECK(collection.animals.size() == 180);
  const AnimalState* first = collection.animal_by_key("sac 31-4-001");
  REQUIRE(first != nullptr);
  CHECK(first->species == "Neoholothele incei");
  CHECK(first->stage == Stage::Sling);
  CHECK(first->instar == 1);
  CHECK(first->acquired == parse_day("2031-01-01").value());
  CHECK(first->enclosure == batch->tubs.front());
  const EnclosureState* last = collection.enclosure(batch->tubs.back());
  CHECK(last->place == Place{"A", "2", "180"});
  CHECK(last->residents.size() == 1);
  CHECK_FALSE(last->label_printed);
}

TEST_CASE("all of a batch is written, or nothing") {
  Kiosk kiosk(1);
  kiosk.log.fail_next_write({ErrorKind::Full, "There is no room left.", ""});
  const auto batch = kiosk.make(pulled_sac());
  REQUIRE_FALSE(batch);
  CHECK(batch.error().kind == ErrorKind::Full);
  CHECK(everything(kiosk.log).empty());
  CHECK(kiosk.make(pulled_sac()));
}

TEST_CASE("codes never repeat, not later, not after taking back, not across kiosks") {
  Kiosk one(1);
  Kiosk other(2);
  std::set<Code> codes;
  for (int round = 0; round < 3; ++round)
    for (Kiosk* kiosk : {&one, &other}) {
      const auto batch = kiosk->make(pulled_sac(200));
      REQUIRE(batch);
      codes.insert(batch->tubs.begin(), batch->tubs.end());
      // The keeper takes the whole batch back; its labels may be printed already.
      std::vector<Draft> undo;
      for (const Draft& draft : batch->drafts)
        undo.push_back({kiosk->ids.next_event(),
                        "",
                        {evening, Precision::Exact},
                        draft.animal,
                        draft.enclosure,
                        Retracted{draft.id},
                        ""});
      REQUIRE(kiosk->log.append(undo, evening.utc));
    }
  CHECK(codes.size() == 3 * 2 * 200);
}

TEST_CASE("two programs that issue codes at the same moment end with different ones") {
  Interloper log(kiosk_number(1));
  FixedClock clock(evening);
  CountingIds ids_of_other(50'000);
  CountingIds ids(90'000);
  const auto other = draft_batch(pulled_sac(20), {}, log.kiosk(), ids_of_other, evening);
  REQUIRE(other);
  log.before_next_append = other->drafts;
  const auto batch = make_batch(log, pulled_sac(20), ids, clock);
  REQUIRE(batch);
  for (const Code& code : batch->tubs)
    CHECK(std::ranges::find(other->tubs, code) == other->tubs.end());
  const Collection collection = fold_collection(log.read_kinds(roster_kinds()).value());
  CHECK(collection.animals.size() == 40);
}

TEST_CASE("animals of a second batch of the same sac are numbered on") {
  Kiosk kiosk(1);
  REQUIRE(kiosk.make(pulled_sac(12)));
  const auto second = kiosk.make(pulled_sac(3));
  REQUIRE(second);
  const Collection collection = kiosk.collection();
  CHECK(collection.animal_by_key("sac 31-4-013") != nullptr);
  CHECK(collection.animal_by_key("sac 31-4-015") != nullptr);
  CHECK(collection.animals.size() == 15);
}

TEST_CASE("positions count up, and shelves where so many fit") {
  Kiosk kiosk(1);
  BatchRequest request = pulled_sac(5);
  request.tubs_on_a_shelf = 2;
  request.first = {"A", "shelf 9", "L08"};
  const auto batch = kiosk.make(request);
  REQUIRE(batch);
  const Collection collection = kiosk.collection();
  const auto place = [&](std::size_t i) { return collection.enclosure(batch->tubs[i])->place; };
  CHECK(place(0) == Place{"A", "shelf 9", "L08"});
  CHECK(place(1) == Place{"A", "shelf 9", "L09"});
  CHECK(place(2) == Place{"A", "shelf 10", "L08"});
  CHECK(place(4) == Place{"A", "shelf 11", "L08"});
  CHECK(counted_up("99", 1) == "100");
  CHECK_FALSE(counted_up("left", 1));
  CHECK_FALSE(counted_up("", 1));
}

TEST_CASE("a batch that makes no sense is refused and nothing is written") {
  const auto refused = [](auto change) {
    Kiosk kiosk(1);
    BatchRequest request = pulled_sac(3);
    change(request);
    const auto batch = kiosk.make(request);
    const bool nothing = everything(kiosk.log).empty();
    return !batch && batch.error().kind == ErrorKind::BadInput && nothing;
  };
  CHECK_FALSE(refused([](BatchRequest&) {}));
  CHECK(refused([](BatchRequest& r) { r.count = 0; }));
  CHECK(refused([](BatchRequest& r) { r.count = -4; }));
  CHECK(refused([](BatchRequest& r) { r.count = 10'000; }));
  CHECK(refused([](BatchRequest& r) { r.species.clear(); }));
  CHECK(refused([](BatchRequest& r) { r.first.position = "window"; }));
  CHECK(refused([](BatchRequest& r) { r.instar = 400; }));
  CHECK(refused([](BatchRequest& r) { r.tubs_on_a_shelf = -1; }));
}

TEST_CASE("labels are printed again by tub, shelf, sac, or where they were not stuck on") {
  Kiosk kiosk(1);
  BatchRequest request = pulled_sac(4);
  request.tubs_on_a_shelf = 2;
  const auto batch = kiosk.make(request);
  REQUIRE(batch);
  REQUIRE(mark_printed(kiosk.log, batch->tubs, "Ines", kiosk.ids, kiosk.clock));
  kiosk.clock.advance(std::chrono::minutes(3));
  const Code scanned = batch->tubs[2];
  REQUIRE(kiosk.log.append({{kiosk.ids.next_event(),
                             "",
                             {kiosk.clock.now(), Precision::Exact},
                             std::nullopt,
                             scanned,
                             LabelConfirmed{},
                             ""}},
                           kiosk.clock.now().utc));
  const Collection collection = kiosk.collection();
  const auto tubs = [&](const TubSelection& which, StuckOn stuck = StuckOn::Either) {
    return selected_tubs(collection, which, stuck).value_or(std::vector<Code>{});
  };
  CHECK(tubs(AllTubs{}) == batch->tubs);
  CHECK(tubs(TubsOfSource{"sac 31-4"}) == batch->tubs);
  CHECK(tubs(TubsOnShelf{"A", "3"}) == std::vector{batch->tubs[2], batch->tubs[3]});
  CHECK(tubs(TubsOnShelf{"A", ""}).size() == 4);
  CHECK(tubs(TheseTubs{{batch->tubs[3], batch->tubs[0]}}) ==
        std::vector{batch->tubs[3], batch->tubs[0]});
  CHECK(tubs(AllTubs{}, StuckOn::NotYet).size() == 3);
  CHECK(tubs(TubsOnShelf{"A", "3"}, StuckOn::NotYet) == std::vector{batch->tubs[3]});
  CHECK(tubs(TubsOnShelf{"Z", "3"}).empty());
  CHECK(tubs(TheseTubs{{scanned}}, StuckOn::NotYet).empty());
  CHECK_FALSE(selected_tubs(collection, TheseTubs{{tub_number(99)}}, StuckOn::Either));
}

TEST_CASE("a label says who lives in the tub, and only the code when nobody does") {
  Kiosk kiosk(1);
  BatchRequest request = pulled_sac(1);
  request.species = "Poecilotheria miranda";
  const auto batch = kiosk.make(request);
  REQUIRE(batch);
  Collection collection = kiosk.collection();
  const LabelContent content = label_content(collection, batch->tubs[0]);
  CHECK(content.species == "Poecilotheria miranda");
  CHECK(content.source == "sac 31-4");
  CHECK(content.instar == 1);
  CHECK(content.hazard == Hazard::Venom);
  collection.enclosures.at(batch->tubs[0]).residents.clear();
  CHECK(label_content(collection, batch->tubs[0]) == LabelContent{.code = batch->tubs[0]});
}
