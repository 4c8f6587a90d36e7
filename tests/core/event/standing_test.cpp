#include <algorithm>

#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {
const AnimalId animal = animal_number(1);

Event retraction(std::int64_t order, std::int64_t target) {
  return make_event(order, 100, animal, Retracted{event_number(target)});
}
}  // namespace

TEST_CASE("a retracted event does not stand") {
  const auto events = standing({make_event(1, 0, animal, Misted{}), retraction(2, 1)});
  CHECK(events.empty());
}

TEST_CASE("a retraction that was itself taken back lets the event stand again") {
  const auto events =
      standing({make_event(1, 0, animal, Misted{}), retraction(2, 1), retraction(3, 2)});
  REQUIRE(events.size() == 1);
  CHECK(events[0].id == event_number(1));
}

TEST_CASE("a retraction of something later, of nothing or of itself has no effect") {
  CHECK(standing({retraction(1, 2), make_event(2, 0, animal, Misted{})}).size() == 1);
  CHECK(standing({retraction(1, 77), make_event(2, 0, animal, Misted{})}).size() == 1);
  CHECK(standing({retraction(1, 1)}).empty());
}

TEST_CASE("a retraction may arrive before its event") {
  CHECK(standing({retraction(2, 1), make_event(1, 0, animal, Misted{})}).empty());
}

TEST_CASE("events are told in the order in which they happened") {
  const auto events =
      standing({make_event(1, 50, animal, Misted{}), make_event(2, 10, animal, WaterFilled{}),
                make_event(3, 50, animal, Noted{})});
  REQUIRE(events.size() == 3);
  CHECK(events[0].id == event_number(2));
  CHECK(events[1].id == event_number(1));
  CHECK(events[2].id == event_number(3));
}

TEST_CASE("the order of arrival and doublets change nothing") {
  rc::prop("shuffled and doubled", [] {
    const auto log = *any_log();
    auto shuffled = log;
    shuffled.insert(shuffled.end(), log.begin(), log.begin() + static_cast<long>(log.size() / 2));
    const auto seed = *rc::gen::arbitrary<unsigned>();
    std::mt19937 random(seed);
    std::shuffle(shuffled.begin(), shuffled.end(), random);
    RC_ASSERT(standing(shuffled) == standing(log));
  });
}
