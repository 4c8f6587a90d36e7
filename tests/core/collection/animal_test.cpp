#include "core/collection/animal.hpp"

#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

const AnimalId animal = animal_number(1);

Event added(std::int64_t order, double hour) {
  Event event = make_event(order, hour, animal,
                           AnimalAdded{.key = "ho-3",
                                       .species = "Haplocosmia himalayana",
                                       .stage = Stage::Juvenile,
                                       .instar = 5});
  event.enclosure = tub_number(1);
  return event;
}

AnimalState fold(std::vector<Event> events) {
  events.push_back(added(0, 0));
  return fold_animal(std::move(events)).value();
}

}  // namespace

TEST_CASE("events without an animal to add make no animal") {
  CHECK_FALSE(fold_animal({}));
  CHECK_FALSE(fold_animal({make_event(1, 1, animal, Misted{})}));
  CHECK_FALSE(fold_animal({added(0, 0), make_event(1, 1, animal, Retracted{event_number(0)})}));
}

TEST_CASE("refusals count since the last meal") {
  const auto state = fold({make_event(1, 1, animal, Offered{Outcome::Refused}),
                           make_event(2, 2, animal, Offered{Outcome::Took}),
                           make_event(3, 3, animal, Offered{Outcome::Refused}),
                           make_event(4, 4, animal, Offered{Outcome::LeftOvernight})});
  CHECK(state.refusals_since_meal == 2);
  CHECK(state.last_meal == at_hour(2));
  CHECK(state.last_offer == LastOffer{Outcome::LeftOvernight, at_hour(4)});
}

TEST_CASE("prey left overnight stays in the tub until it is taken out or eaten") {
  const Event left = make_event(1, 1, animal, Offered{Outcome::LeftOvernight});
  CHECK(fold({left}).prey_in_tub == at_hour(1));
  CHECK_FALSE(fold({left, make_event(2, 2, animal, PreyRemoved{})}).prey_in_tub);
  CHECK_FALSE(fold({left, make_event(2, 2, animal, Offered{Outcome::Took})}).prey_in_tub);
}

TEST_CASE("a moult advances the instar and ends the signs") {
  const auto state = fold({make_event(1, 1, animal, Looked{{Sign::DarkAbdomen}}),
                           make_event(2, 2, animal, ShedFound{})});
  CHECK(state.instar == 6);
  CHECK(state.moults == 1);
  CHECK(state.signs.empty());
  CHECK(state.last_moult == LastMoult{at_hour(2), false});
}

TEST_CASE("signs tapped one by one in one visit are seen together, the next visit starts anew") {
  const Event dark = make_event(1, 1, animal, Looked{{Sign::DarkAbdomen}});
  const Event plump = make_event(2, 1.01, animal, Looked{{Sign::PlumpAbdomen}});
  CHECK(fold({dark, plump}).signs == SignSet{Sign::DarkAbdomen, Sign::PlumpAbdomen});
  CHECK(fold({dark, plump, make_event(3, 30, animal, Looked{})}).signs.empty());
}

TEST_CASE("a shed is in the tub until it is taken out") {
  const Event shed = make_event(1, 1, animal, ShedFound{});
  CHECK(fold({shed}).shed_in_tub == at_hour(1));
  const auto taken_out = fold({shed, make_event(2, 2, animal, ShedRemoved{})});
  CHECK_FALSE(taken_out.shed_in_tub);
  CHECK(taken_out.shed_removed == at_hour(2));
}

TEST_CASE("on its back counts from the first of the looks in a row, and ends with the moult") {
  const auto back = [](std::int64_t order, double hour) {
    return make_event(order, hour, animal, Looked{{Sign::OnItsBack}});
  };
  CHECK(fold({back(1, 10), back(2, 20)}).on_its_back_since == at_hour(10));
  CHECK(fold({back(1, 1), make_event(2, 4, animal, Looked{}), back(3, 9)}).on_its_back_since ==
        at_hour(9));
  CHECK_FALSE(fold({back(1, 1), make_event(2, 2, animal, Moulted{})}).on_its_back_since);
}

TEST_CASE("the last meal and the share of refusals are remembered") {
  const auto state =
      fold({make_event(1, 1, animal, Offered{Outcome::Took, "roach nymph", 2, Millimetres{9}}),
            make_event(2, 2, animal, Offered{Outcome::Refused, "cricket"})});
  CHECK(state.meal == Meal{"roach nymph", 2, Millimetres{9}});
  CHECK(state.offers == 2);
  CHECK(state.refusals == 1);
}

TEST_CASE("a female guards her sac until it is pulled") {
  const Event sac = make_event(1, 1, animal, EggSac{});
  CHECK(fold({sac}).guards_sac_since == at_hour(1));
  CHECK_FALSE(fold({sac, make_event(2, 2, animal, Pulled{})}).guards_sac_since);
}

TEST_CASE("undoing a moult gives back the instar") {
  const auto state = fold({make_event(1, 1, animal, ShedFound{}),
                           make_event(2, 2, animal, Retracted{event_number(1)})});
  CHECK(state.instar == 5);
  CHECK_FALSE(state.last_moult);
}

TEST_CASE("a rehoused animal lives in the new tub, a dead one stays in its last") {
  auto state = fold({make_event(1, 1, animal, Rehoused{tub_number(2)})});
  CHECK(state.enclosure == tub_number(2));
  state = fold({make_event(1, 1, animal, Died{})});
  CHECK(state.enclosure == tub_number(1));
  CHECK(state.life == Life::Died);
  CHECK(state.ended == at_hour(1));
}

TEST_CASE("an ultimate moult seen by sexing makes a mature male") {
  const auto state = fold({make_event(1, 1, animal, Sexed{Sex::Male, Stage::MatureMale})});
  CHECK(state.sex == Sex::Male);
  CHECK(state.stage == Stage::MatureMale);
}

TEST_CASE("the same events give the same animal in whatever order they arrive") {
  rc::prop("shuffled", [] {
    const auto log = *any_log();
    auto shuffled = log;
    std::mt19937 random(*rc::gen::arbitrary<unsigned>());
    std::shuffle(shuffled.begin(), shuffled.end(), random);
    RC_ASSERT(fold_animal(shuffled) == fold_animal(log));
  });
}
