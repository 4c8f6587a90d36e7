#include "core/words/dates.hpp"
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

TEST_CASE("days and measures are told as the keeper chose, whatever the rule") {
  Scenario animal;
  animal.rules.wording = {DateStyle::MonthDay, {LengthUnit::Inch, TemperatureUnit::Fahrenheit}};
  const std::string day =
      long_day_words(Scenario::today() + std::chrono::days{5}, DateStyle::MonthDay);
  CHECK(animal.meal(2).told().sentence.starts_with("Nothing today. Next meal on " + day));
  Scenario hungry;
  hungry.rules.wording = animal.rules.wording;
  const auto said = hungry.meal(20).refusal(9).temperature(15).told();
  CHECK(said.sentence == "Offer 1 cricket of about 0.4 in.");
  CHECK(std::ranges::count(said.why, "It is cold here, 59 °F: that alone can put it off.") == 1);
}
