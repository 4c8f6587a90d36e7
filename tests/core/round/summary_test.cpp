#include "core/round/summary.hpp"

#include "tests/core/round/rack_room.hpp"

using namespace rackside;
using namespace rackside::tests;

TEST_CASE("the end of a round says what needs another look, the urgent first, each animal once") {
  RackRoom room;
  for (int i = 1; i <= 6; ++i)
    room.tub(i, {"A", "1", std::to_string(i)}).happened(20, i, Offered{}).believed(i, 0);
  const auto plan = room.plan();
  std::vector<Event> since;
  const auto now_happens = [&](int animal, Details details) {
    room.happened(0, animal, details);
    since.push_back(room.log.back());
  };
  now_happens(1, Offered{});
  now_happens(2, Offered{Outcome::Refused});
  now_happens(3, Offered{Outcome::LeftOvernight});
  now_happens(4, Looked{{Sign::OnItsBack}});
  now_happens(5, Offered{Outcome::Refused});
  now_happens(5, Looked{{Sign::Sluggish}});
  const auto summary = summarise(plan, room.plan(), since, RackRoom::days_ago(0.1));
  CHECK(summary.due == 6);
  CHECK(summary.done == 5);
  CHECK(summary.fed == 1);
  CHECK(summary.refused == 2);
  CHECK(summary.prey_left == 1);
  REQUIRE(summary.look_again.size() == 5);
  const std::vector<std::pair<LookAgain, int>> expected{{LookAgain::Urgent, 4},
                                                        {LookAgain::HealthFlag, 5},
                                                        {LookAgain::PreyLeft, 3},
                                                        {LookAgain::Refused, 2},
                                                        {LookAgain::NotReached, 6}};
  for (std::size_t i = 0; i < expected.size(); ++i) {
    CHECK(summary.look_again[i].reason == expected[i].first);
    CHECK(summary.look_again[i].tub.animal == animal_number(expected[i].second));
  }
}

TEST_CASE("a round in which all is well has nothing to look at again") {
  RackRoom room;
  room.tub(1, {"A", "1", "1"}).happened(20, 1, Offered{}).believed(1, 0);
  const auto plan = room.plan();
  room.happened(0, 1, Offered{});
  const auto summary = summarise(plan, room.plan(), {room.log.back()}, RackRoom::days_ago(0.1));
  CHECK(summary == Summary{.due = 1, .done = 1, .fed = 1});
}
