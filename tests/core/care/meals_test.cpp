// How often and what. Every rule has an example and its opposite; the trade facts are common
// practice, no source.

#include "core/care/meals.hpp"

#include "tests/core/care/scenario.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

Day in_days(int days) { return Scenario::today() + std::chrono::days{days}; }

}  // namespace

TEST_CASE("a sling eats more often than a juvenile, a juvenile more often than an adult") {
  const auto& rules = default_rules();
  const auto every = [&](Stage stage) {
    return days_between_meals(Scenario{}.stage(stage).state(), rules, Scenario::today());
  };
  CHECK(every(Stage::Sling) < every(Stage::Juvenile));
  CHECK(every(Stage::Juvenile) < every(Stage::Adult));
}

TEST_CASE("a sling grows up though nobody writes it down") {
  const auto stage = [](std::optional<int> instar, int moults, Stage came_as) {
    AnimalState animal;
    animal.stage = came_as;
    animal.instar = instar;
    animal.moults = moults;
    return grown_stage(animal, default_rules());
  };
  CHECK(stage(5, 3, Stage::Sling) == Stage::Sling);
  CHECK(stage(6, 4, Stage::Sling) == Stage::Juvenile);
  CHECK(stage({}, 2, Stage::Sling) == Stage::Sling);
  CHECK(stage({}, 3, Stage::Sling) == Stage::Juvenile);
  CHECK(stage(11, 6, Stage::Juvenile) == Stage::Adult);
  CHECK(stage(3, 1, Stage::Juvenile) == Stage::Juvenile);
  CHECK(stage(3, 1, Stage::Adult) == Stage::Adult);
  CHECK(stage(12, 9, Stage::MatureMale) == Stage::MatureMale);
  CHECK(stage({}, 9, Stage::Unknown) == Stage::Unknown);
}

TEST_CASE("what was learned last decides how large the prey is") {
  const Measured measured{Measure::LegSpan, Millimetres{75}};
  const Offered taken{Outcome::Took, "cricket", 1, Millimetres{10}};
  CHECK(Scenario{}.ago(60, measured).ago(30, taken).believed(0).told().prey->size ==
        Millimetres{10});
  CHECK(Scenario{}.ago(60, taken).ago(30, measured).believed(0).told().prey->size ==
        Millimetres{15});
}

TEST_CASE("one that took everything is due later than one that refused") {
  const auto took = Scenario{}.stage(Stage::Adult).meal(2).believed(0).told();
  const auto refused = Scenario{}.stage(Stage::Adult).refusal(2).believed(0).told();
  CHECK(took.task == Task::NotDue);
  CHECK(took.next_due == in_days(10));
  CHECK(refused.task == Task::Reoffer);
  CHECK(refused.next_due == in_days(2));
  CHECK(refused.sentence == "Try again on Saturday 7 February.");
}

TEST_CASE("one that refuses on and on is not offered food every few days") {
  const auto said =
      Scenario{}.stage(Stage::Adult).meal(30).refusal(12).refusal(8).refusal(4).believed(0).told();
  CHECK(said.task == Task::Reoffer);
  CHECK(said.next_due == in_days(8));
}

TEST_CASE("a plump animal waits longer for its meal") {
  CHECK(Scenario{}.meal(8).looked(1).believed(0).told().task == Task::Offer);
  CHECK(Scenario{}.meal(8).looked(1, {Sign::PlumpAbdomen}).believed(0).told().task == Task::NotDue);
}

TEST_CASE("an animal that refuses most of its offers is offered less often") {
  Scenario picky, eager;
  for (int week = 9; week > 0; --week) {
    const double days = 7.0 * week + 1;
    week % 3 == 1 ? picky.meal(days) : picky.refusal(days);
    eager.meal(days);
  }
  CHECK(picky.believed(0).told().task == Task::NotDue);
  CHECK(eager.believed(0).told().task == Task::Offer);
}

TEST_CASE("a new or rehoused animal settles before its first meal") {
  Scenario moved;
  moved.meal(20).ago(1, Rehoused{tub_number(3)}).believed(0);
  CHECK(moved.told().task == Task::NotDue);
  CHECK(moved.told().next_due == in_days(3));
  CHECK(Scenario{}.meal(20).ago(5, Rehoused{tub_number(3)}).believed(0).told().task == Task::Offer);
}

TEST_CASE("prey is no longer than the abdomen, and smaller after a moult") {
  auto measured =
      Scenario{}.ago(60, Measured{Measure::LegSpan, Millimetres{75}}).meal(20).believed(0);
  CHECK(measured.told().sentence == "Offer 1 cricket of about 15 mm.");
  CHECK(Scenario{}
            .ago(60, Measured{Measure::LegSpan, Millimetres{75}})
            .meal(30)
            .ago(9, Moulted{})
            .ago(5, ShedRemoved{})
            .ago(4, Sexed{Sex::Female})
            .believed(0)
            .told()
            .sentence == "Offer 1 cricket of about 8 mm and watch.");
}

TEST_CASE("what it took last is offered again, unless the keeper has a word of his own") {
  auto roaches = Scenario{}.stage(Stage::Adult);
  roaches.ago(30, Offered{Outcome::Took, "roach", 1, Millimetres{24}}).believed(0);
  CHECK(roaches.told().sentence == "Offer 2 roaches of about 25 mm.");
  roaches.rules.prey = "locust";
  CHECK(roaches.told().sentence == "Offer 2 locusts of about 25 mm.");
  CHECK(Scenario{}.stage(Stage::Adult).believed(0).told().prey->kind == "cricket");
}

TEST_CASE("a group gets a meal for each") {
  Scenario communal;
  communal.added.count = 6;
  CHECK(communal.meal(20).believed(0).told().prey->count == 6);
}

TEST_CASE("a fast with no other sign and right temperature raises a question, not certainty") {
  auto fast = Scenario{}.meal(70).refusal(20).refusal(10).looked(9).temperature(25).believed(0.15);
  const auto said = fast.told();
  CHECK(said.task == Task::LookCloser);
  CHECK(said.health_flag);
  CHECK_FALSE(said.urgent);
  CHECK(said.sentence.back() == '?');
  fast.looked(1);  // somebody looked: it is offered food again
  CHECK(fast.told().task == Task::Offer);
}

TEST_CASE("a fast is no question in the cold, in premoult, after few days or in an adult") {
  const auto fast = [](double days) { return Scenario{}.meal(days).refusal(20).refusal(10); };
  CHECK(fast(70).temperature(16).believed(0.15).told().task == Task::Offer);
  CHECK(fast(70).temperature(16).believed(0.15).told().why[2].find("cold") != std::string::npos);
  CHECK(fast(70).believed(0.8).told().task == Task::LookForShed);
  CHECK(fast(40).believed(0.15).told().task == Task::Offer);
  CHECK(fast(70).stage(Stage::Adult).believed(0.15).told().task == Task::Offer);
}

TEST_CASE("water that is written down comes due, water that never was does not nag") {
  CHECK(Scenario{}.meal(2).ago(9, Misted{}).believed(0).told().task == Task::MistAndCheckWater);
  CHECK(Scenario{}.meal(2).ago(3, Misted{}).believed(0).told().task == Task::NotDue);
  CHECK(Scenario{}.meal(2).believed(0).told().task == Task::NotDue);
  CHECK(
      also(Scenario{}.meal(20).ago(9, WaterFilled{}).believed(0).told(), Task::MistAndCheckWater));
}

TEST_CASE("a mature male's clock stands beside what is said, as a rule of thumb") {
  const auto male = Scenario{}.stage(Stage::MatureMale).ago(220, Moulted{}).meal(2).believed(0);
  CHECK(male.told().why.back() == "Mature for 7 months; 12 to 18 are usual, as a rule of thumb.");
  Scenario bought;
  bought.added = {.species = "Novogenus invented", .stage = Stage::MatureMale};
  bought.meal(2);
  CHECK(male_clock(bought.state(), bought.rules, Scenario::today())->at_least);
  CHECK_FALSE(male_clock(Scenario{}.state(), default_rules(), Scenario::today()));
}

TEST_CASE("expected refusals follow the animal's own record and its premoult") {
  Scenario eager, picky;
  for (int i = 1; i <= 20; ++i) eager.meal(10.0 * i);
  for (int i = 1; i <= 20; ++i) picky.refusal(10.0 * i);
  const auto& rules = default_rules();
  CHECK(refusal_probability(eager.state(), rules, 0) == Approx(1.0 / 25));   // (0 + 5 * 0.2) / 25
  CHECK(refusal_probability(picky.state(), rules, 0) == Approx(21.0 / 25));  // (20 + 1) / 25
  CHECK(refusal_probability(Scenario{}.state(), rules, 0) == Approx(0.2));
  CHECK(refusal_probability(eager.state(), rules, 1) == Approx(0.85));
}
