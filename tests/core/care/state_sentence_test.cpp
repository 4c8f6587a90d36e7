#include "tests/core/care/scenario.hpp"

using namespace rackside;
using namespace rackside::tests;

TEST_CASE("the state is one sentence a keeper would say") {
  CHECK(Scenario{}.meal(6).believed(0.1).state_told() == "Feeding; last meal 6 days ago");
  CHECK(Scenario{}.state_told() == "No meal on record yet");
  CHECK(Scenario{}.meal(62).refusal(20).refusal(5).believed(0.1).state_told() ==
        "Fasting: no meal for 62 days");
  CHECK(Scenario{}.meal(20).believed(0.8).state_told() == "In premoult, 8 of 10 likely");
  CHECK(Scenario{}.meal(20).believed(0.99).state_told() == "In premoult, more than 9 of 10 likely");
  CHECK(Scenario{}.ago(3, Moulted{}).state_told() == "Hardening: moulted 3 days ago");
  CHECK(Scenario{}.ago(3, ShedFound{}).state_told() == "Hardening: shed found 3 days ago");
  CHECK(Scenario{}.meal(30).believed(0.1, 0.2, 0.6).state_told() ==
        "Moulted unseen, 6 of 10 likely");
  CHECK(Scenario{}.looked(0.1, {Sign::OnItsBack}).state_told() == "Moulting now: leave it alone");
  CHECK(Scenario{}.looked(2, {Sign::OnItsBack}).state_told() == "On its back for 48 hours");
  CHECK(Scenario{}.stage(Stage::MatureMale).ago(220, Moulted{}).state_told() ==
        "Mature male, 7 months");
  CHECK(Scenario{}.stage(Stage::Adult).ago(12, EggSac{}).state_told() == "Guards a sac, 12 days");
  CHECK(Scenario{}.ago(3, Died{}).state_told() == "Died 2032-02-02");
}
