#include "core/round/day_plan.hpp"

#include <random>

#include "tests/core/round/rack_room.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

RackRoom three_shelves() {
  RackRoom room;
  room.tub(1, {"B", "1", "1"}).tub(2, {"A", "10", "1"}).tub(3, {"A", "2", "12"});
  room.tub(4, {"A", "2", "3"}).tub(5, {"A", "2", "4"}).tub(6, {});
  for (int number = 1; number <= 6; ++number)
    room.happened(20, number, Offered{}).believed(number, 0);
  return room;
}

// A random log in which four animals live to begin with.
std::vector<Event> any_collection_log() {
  std::vector<Event> log = *any_log(100);
  for (int i = 0; i < 4; ++i) {
    log.push_back(
        make_event(1000 + i, -1, animal_number(i),
                   AnimalAdded{.species = "Novogenus invented", .stage = Stage::Juvenile}));
    log.back().enclosure = tub_number(i);
  }
  return log;
}

}  // namespace

TEST_CASE("the day is walked by rack, shelf and position, unknown places last") {
  CHECK(animals_of(three_shelves().plan().due) == numbered({4, 5, 3, 2, 1, 6}));
}

TEST_CASE("a shelf is done at a time") {
  const auto plan = three_shelves().plan();
  const auto parts = by_shelf(plan.due);
  REQUIRE(parts.size() == 4);
  CHECK(parts[0].shelf == Place{"A", "2", ""});
  CHECK(parts[0].tubs.size() == 3);
  CHECK(parts[1].shelf == Place{"A", "10", ""});
  CHECK(parts[3].shelf == Place{});
  CHECK(by_shelf({}).empty());
}

TEST_CASE("what is to be left alone is skipped, and the plan says so") {
  auto room = three_shelves();
  room.happened(0.2, 5, Looked{{Sign::OnItsBack}}).happened(1, 3, Offered{});
  const auto plan = room.plan();
  CHECK(animals_of(plan.due) == numbered({4, 2, 1, 6}));
  CHECK(animals_of(plan.wait) == numbered({3}));
  CHECK(animals_of(plan.leave_alone) == numbered({5}));
}

TEST_CASE("the dead and the sold are not in the plan") {
  auto room = three_shelves();
  room.happened(5, 1, Died{}).happened(5, 2, Left{});
  CHECK(animals_of(room.plan().due) == numbered({4, 5, 3, 6}));
}

TEST_CASE("one rack can be walked alone") {
  CHECK(animals_of(three_shelves().plan("B").due) == numbered({1}));
}

TEST_CASE("an animal without a forecast and one without a tub are planned all the same") {
  RackRoom room;
  room.add(50, 9, AnimalAdded{.species = "Novogenus invented"});
  CHECK(animals_of(room.plan().due) == numbered({9}));
}

TEST_CASE("every living animal stands in the plan exactly once") {
  rc::prop("whatever happened", [] {
    const auto collection = fold_collection(any_collection_log());
    const auto plan = plan_day(collection, {}, {}, {}, at_hour(*rc::gen::inRange(100, 900)).moment);
    std::multiset<AnimalId> planned;
    for (const auto* list : {&plan.due, &plan.wait, &plan.leave_alone})
      for (const TubTask& tub : *list) planned.insert(tub.animal);
    std::multiset<AnimalId> living;
    for (const auto& [id, animal] : collection.animals)
      if (animal.life == Life::Living) living.insert(id);
    RC_CLASSIFY(living.size() >= 2, "two or more");
    RC_ASSERT(planned == living);
  });
}

TEST_CASE("the plan does not depend on the order of the log") {
  rc::prop("shuffled", [] {
    const auto log = any_collection_log();
    auto shuffled = log;
    std::mt19937 random(*rc::gen::arbitrary<unsigned>());
    std::shuffle(shuffled.begin(), shuffled.end(), random);
    const auto plan = [](const std::vector<Event>& events) {
      return plan_day(fold_collection(events), {}, fold_rules(events), fold_climate(events),
                      at_hour(250).moment);
    };
    RC_ASSERT(plan(shuffled) == plan(log));
  });
}

TEST_CASE("the keeper's own rule for one animal moves it alone") {
  auto room = three_shelves();
  room.happened(1, 4, RuleSet{RuleScope::Animal, "", "feed_every_juvenile", "60"});
  room.rules = fold_rules(room.log);
  CHECK(animals_of(room.plan().wait) == numbered({4}));
  CHECK(room.plan().due.size() == 5);
}
