#include "core/care/condition.hpp"

#include <set>

#include "tests/core/care/scenario.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

Condition condition(const Scenario& scenario) {
  return condition_of(scenario.state(), scenario.forecast ? &*scenario.forecast : nullptr,
                      scenario.rules, Scenario::now());
}

}  // namespace

TEST_CASE("a condition's first two letters tell it from all others") {
  std::set<std::string_view> beginnings;
  for (const Condition each : all_conditions) {
    REQUIRE(condition_word(each).size() > 2);
    beginnings.insert(condition_word(each).substr(0, 2));
  }
  CHECK(beginnings.size() == all_conditions.size());
}

TEST_CASE("the condition is the one that the state sentence tells") {
  CHECK(condition(Scenario{}.meal(6).believed(0.1)) == Condition::Feeding);
  CHECK(condition(Scenario{}) == Condition::Newcomer);
  CHECK(condition(Scenario{}.meal(62).refusal(20).refusal(5).believed(0.1)) == Condition::Fasting);
  CHECK(condition(Scenario{}.meal(20).believed(0.8)) == Condition::Premoult);
  CHECK(condition(Scenario{}.ago(3, ShedFound{})) == Condition::Hardening);
  CHECK(condition(Scenario{}.meal(30).believed(0.1, 0.2, 0.6)) == Condition::MoultedUnseen);
  CHECK(condition(Scenario{}.looked(0.1, {Sign::OnItsBack})) == Condition::Moulting);
  CHECK(condition(Scenario{}.looked(0.1, {Sign::ShrivelledAbdomen})) == Condition::Shrivelled);
  CHECK(condition(Scenario{}.stage(Stage::MatureMale).ago(220, Moulted{})) ==
        Condition::MatureMale);
  CHECK(condition(Scenario{}.stage(Stage::Adult).ago(12, EggSac{})) == Condition::GuardsSac);
  CHECK(condition(Scenario{}.ago(3, Died{})) == Condition::Gone);
}

TEST_CASE("a meal is overdue from the day after it was due") {
  const auto every = static_cast<int>(default_rules().feed_every_juvenile);
  CHECK_FALSE(Scenario{}.meal(every).believed(0.1).told().overdue);
  CHECK(Scenario{}.meal(every).believed(0.1).told().urgency == Urgency::Due);
  CHECK(Scenario{}.meal(every + 1).believed(0.1).told().overdue);
  CHECK_FALSE(Scenario{}.meal(every - 1).believed(0.1).told().overdue);
}
