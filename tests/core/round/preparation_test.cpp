#include "core/round/preparation.hpp"

#include <cmath>

#include "tests/core/round/rack_room.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

TubTask offer(int number, std::string kind, int count, double mm, double p_refused) {
  TubTask tub{.animal = animal_number(number),
              .enclosure = {},
              .place = {},
              .state = {},
              .instruction = {}};
  tub.instruction.task = Task::Offer;
  tub.instruction.urgency = Urgency::Due;
  tub.instruction.prey = PreyPlan{std::move(kind), count, Millimetres{mm}, p_refused};
  return tub;
}

Collection nobody_in_particular(int animals) {
  Collection collection;
  for (int i = 0; i < animals; ++i) collection.animals[animal_number(i)].id = animal_number(i);
  return collection;
}

}  // namespace

TEST_CASE("prey is counted by kind and size, with expected refusals taken off and a margin") {
  DayPlan plan;
  for (int i = 0; i < 100; ++i) plan.due.push_back(offer(i, "cricket", 1, 8, 0.2));
  plan.due.push_back(offer(100, "cricket", 2, 15, 0));
  plan.due.push_back(offer(101, "roach", 1, 8, 1));
  const auto ready = prepare(plan, nobody_in_particular(102), 1.28);
  REQUIRE(ready.prey.size() == 3);
  // Taken: binomial(100, 0.8), mean 80, spread 4; its 90th percentile is 85 (tables of the
  // binomial; 80 + 1.28 * 4 = 85.1 rounded up).
  CHECK(ready.prey[0] ==
        PreyNeeded{"cricket", Millimetres{8}, 100, ready.prey[0].expected_refused, 86});
  CHECK(ready.prey[0].expected_refused == Approx(20));
  CHECK(ready.prey[1].bring == 2);
  CHECK(ready.prey[2].bring == 0);
  CHECK(
      format_prey_needed(ready.prey[0]) ==
      "Bring 86 crickets of about 8 mm: 100 planned, about 20 likely to be refused, 6 for safety.");
}

TEST_CASE("what is carried suffices in about nine rounds out of ten") {
  std::mt19937 random(7);
  DayPlan plan;
  for (int i = 0; i < 60; ++i)
    plan.due.push_back(offer(i, "cricket", 1 + i % 2, 8, 0.1 + 0.01 * i));
  const int bring = prepare(plan, nobody_in_particular(60), default_rules().margin).prey[0].bring;
  int sufficed = 0;
  for (int round = 0; round < 4000; ++round) {
    int taken = 0;
    for (const TubTask& tub : plan.due)
      if (!std::bernoulli_distribution(tub.instruction.prey->p_refused)(random))
        taken += tub.instruction.prey->count;
    if (taken <= bring) ++sufficed;
  }
  CHECK(sufficed > 4000 * 0.88);
  CHECK(sufficed < 4000 * 0.97);
}

TEST_CASE("what else to carry and where to be careful is said once, with the number of tubs") {
  RackRoom room;
  room.tub(1, {"A", "1", "1"}, {.species = "Omothymus violaceopes", .stage = Stage::Adult});
  room.tub(2, {"A", "1", "2"});
  room.happened(20, 1, Misted{}).happened(20, 2, Misted{}).happened(20, 1, Offered{});
  room.happened(1, 2, Offered{Outcome::LeftOvernight}).believed(1, 0).believed(2, 0);
  const auto ready = prepare(room.plan(), room.collection(), 1);
  CHECK(ready.carry == std::vector<std::string>{"Water and a mister: 2 tubs",
                                                "Forceps and a cup for left prey: 1 tub"});
  CHECK(ready.cautions ==
        std::vector<std::string>{"Venom of medical importance: 1 tub. Long forceps, no handling."});
  CHECK(prepare(DayPlan{}, Collection{}, 1) == Preparation{});
}
