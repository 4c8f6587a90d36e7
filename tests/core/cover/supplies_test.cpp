#include "core/cover/supplies.hpp"

#include "tests/core/cover/away_room.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

CoverLine meal(int animal, int count, double p_refused, std::string kind = "cricket") {
  return {.animal = animal_number(animal),
          .duty = Duty::Do,
          .task = Task::Offer,
          .prey = PreyPlan{std::move(kind), count, Millimetres{8}, p_refused}};
}

CoverDay day_with(int number, std::vector<CoverLine> visits) {
  return {.day = AwayRoom::day(number), .visits = std::move(visits)};
}

}  // namespace

TEST_CASE("prey is summed by kind and size, with refusals taken off and a margin") {
  const std::vector<CoverDay> days{day_with(0, {meal(1, 2, 0.5), meal(2, 1, 0)}),
                                   day_with(1, {meal(1, 2, 0.5), meal(3, 1, 0, "roach")})};
  const Supplies supplies = supplies_for(days, {}, 1.0);
  REQUIRE(supplies.prey.size() == 2);
  CHECK(supplies.prey[0].kind == "cricket");
  CHECK(supplies.prey[0].planned == 5);
  CHECK(supplies.prey[0].expected_refused == Approx(2));
  // Animal 1 takes all four or none: its spread is 4 x 0.5, so 5 - 2 + 2.
  CHECK(supplies.prey[0].get == 5);
  CHECK(supplies.prey[1].get == 1);
}

TEST_CASE("meals of many animals need less of a margin than as many of one") {
  std::vector<CoverLine> many;
  for (int i = 0; i < 16; ++i) many.push_back(meal(i, 1, 0.5));
  std::vector<CoverDay> one;
  for (int i = 0; i < 16; ++i) one.push_back(day_with(i, {meal(1, 1, 0.5)}));
  CHECK(supplies_for({day_with(0, many)}, {}, 1.0).prey[0].get == 10);
  CHECK(supplies_for(one, {}, 1.0).prey[0].get == 16);
}

TEST_CASE("what is got is never more than what is planned and covers what is expected") {
  rc::prop("any meals", [] {
    std::vector<CoverDay> days;
    int planned = 0;
    for (int d = 0; d < 6; ++d) {
      std::vector<CoverLine> visits;
      for (int i = 0; i < 5; ++i) {
        const int count = *rc::gen::inRange(1, 4);
        visits.push_back(meal(i, count, *rc::gen::inRange(0, 101) / 100.0));
        planned += count;
      }
      days.push_back(day_with(d, visits));
    }
    const Supplies supplies = supplies_for(days, {}, 1.3);
    RC_ASSERT(supplies.prey.size() == 1u);
    RC_ASSERT(supplies.prey[0].planned == planned);
    RC_ASSERT(supplies.prey[0].get <= planned);
    RC_ASSERT(supplies.prey[0].get + supplies.prey[0].expected_refused >= planned - 1e-6);
  });
}

TEST_CASE("water and visits are told day by day, and tubs without water on record are named") {
  AwayRoom room;
  room.tub(1, {"A", "1", "1"}).happened(7, 1, Misted{}).happened(1, 1, Offered{});
  room.tub(2, {"A", "1", "2"}).happened(1, 2, Offered{});
  const Collection there = room.collection();
  const KnownNow known{there, room.rules, room.climate, room.book, room.outlook};
  const Supplies supplies =
      supplies_for(foresee_days(known, AwayRoom::day(0), nullptr), there, 1.3);
  REQUIRE(supplies.days.size() == 21);
  CHECK(supplies.days[0].water == 1);
  CHECK(supplies.days[0].meals == 0);
  CHECK(supplies.days[7].water == 1);
  CHECK(supplies.days[6].meals == 2);
  CHECK(supplies.without_water == 1);
  CHECK(supplies.tubs == 2);
}

TEST_CASE("a supply is said so that one can check it") {
  CHECK(format_supply({"cricket", Millimetres{8}, 44, 9.2, 38}) ==
        "Get 38 crickets of about 8 mm: 44 planned, about 9 likely to be refused, 3 for safety.");
  CHECK(format_supply({"roach", std::nullopt, 1, 0, 1}) == "Get 1 roach: 1 planned.");
}
