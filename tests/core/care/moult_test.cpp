// Around the moult. Every rule has an example and its opposite; the trade facts are common
// practice, no source.

#include "core/words/dates.hpp"
#include "tests/core/care/scenario.hpp"

using namespace rackside;
using namespace rackside::tests;

TEST_CASE("after a moult nothing is offered for about a week") {
  for (const int day : {0, 1, 3, 6}) {
    INFO("moulted " << day << " days ago");
    CHECK_FALSE(offers(Scenario{}.ago(day, Moulted{}).ago(0, ShedRemoved{}).told()));
  }
  const auto first = Scenario{}.ago(7, Moulted{}).ago(4, ShedRemoved{}).told();
  CHECK(first.task == Task::OfferOneSmall);
  CHECK(first.prey->count == 1);
}

TEST_CASE("a large animal waits for longer than a small one") {
  const auto told = [](double leg_span, double days) {
    return Scenario{}
        .ago(60, Measured{Measure::LegSpan, Millimetres{leg_span}})
        .ago(days, Moulted{})
        .ago(days - 3, ShedRemoved{})
        .told();
  };
  CHECK(offers(told(60, 9)));
  CHECK_FALSE(offers(told(150, 9)));
  CHECK(told(150, 9).sentence == "Offer nothing. First meal on Sunday 8 February.");
  CHECK(offers(told(150, 13)));
}

TEST_CASE("the tub of a freshly moulted animal stays closed, then its shed is taken out") {
  const auto fresh = Scenario{}.ago(1, Moulted{}).told();
  CHECK(fresh.task == Task::LeaveAlone);
  CHECK(fresh.urgency == Urgency::LeaveAlone);
  const auto later = Scenario{}.ago(3, Moulted{}).told();
  CHECK(later.task == Task::TakeOutShed);
  CHECK(later.sentence == "Take out the shed. Offer nothing yet.");
  CHECK(Scenario{}.ago(3, Moulted{}).ago(0.1, ShedRemoved{}).told().task != Task::TakeOutShed);
}

TEST_CASE("a shed still in the tub comes out in the visit that brings the first meal") {
  const auto said = Scenario{}.ago(9, ShedFound{}).told();
  CHECK(said.task == Task::OfferOneSmall);
  CHECK(also(said, Task::TakeOutShed));
  CHECK_FALSE(also(Scenario{}.ago(60, ShedFound{}).told(), Task::TakeOutShed));
}

TEST_CASE("an unsexed juvenile is sexed from its shed, a sexed one or a sling is not") {
  CHECK(also(Scenario{}.ago(3, Moulted{}).told(), Task::MeasureFromShed));
  CHECK(Scenario{}.ago(4, Moulted{}).ago(1, ShedRemoved{}).told().task == Task::Withhold);
  CHECK_FALSE(also(
      Scenario{}.ago(9, Sexed{Sex::Female}).ago(3, Moulted{}).ago(0.1, Sexed{Sex::Female}).told(),
      Task::MeasureFromShed));
  CHECK_FALSE(also(Scenario{}.stage(Stage::Sling).ago(3, Moulted{}).told(), Task::MeasureFromShed));
}

TEST_CASE("a shed that was just taken out is measured while it is soft") {
  auto soft = Scenario{}.ago(10, ShedFound{}).ago(2, ShedRemoved{}).meal(1);
  CHECK(soft.told().task == Task::MeasureFromShed);
  soft.ago(0.1, Sexed{Sex::Male});
  CHECK(soft.told().task == Task::NotDue);
  CHECK(Scenario{}.ago(16, ShedFound{}).ago(9, ShedRemoved{}).meal(1).told().task == Task::NotDue);
}

TEST_CASE("in premoult nothing is offered and a shed is looked for every few days") {
  const auto look = Scenario{}.meal(20).refusal(4).believed(0.8).told();
  CHECK(look.task == Task::LookForShed);
  CHECK(look.sentence == "Look for a shed. Offer nothing.");
  CHECK(look.why[0] == "In premoult: 8 of 10 likely.");
  const auto seen = Scenario{}.meal(20).refusal(4).looked(1).believed(0.8).told();
  CHECK(seen.task == Task::Withhold);
  CHECK(seen.urgency == Urgency::Wait);
  CHECK(seen.next_due == Scenario::today() + std::chrono::days{2});
  CHECK(Scenario{}.meal(20).refusal(4).believed(0.1).told().task == Task::Offer);
}

TEST_CASE("why it is in premoult is the forecast's reasons, or what the record shows") {
  auto seen =
      Scenario{}.meal(20).refusal(9).refusal(5).looked(1, {Sign::DarkAbdomen}).believed(0.8);
  CHECK(seen.told().why == std::vector<std::string>{"In premoult: 8 of 10 likely.",
                                                    "Seen yesterday: dark abdomen.",
                                                    "Refused 2 meals in a row."});
  seen.forecast->why = {{"refused 2 of the last 2 meals", 2.1, {}}, {"ate lately", -1, {}}};
  CHECK(seen.told().why ==
        std::vector<std::string>{"In premoult: 8 of 10 likely.", "Refused 2 of the last 2 meals."});
}

TEST_CASE("the forecast's reasons tell days as the keeper reads dates") {
  auto seen = Scenario{}.meal(20).refusal(9).looked(1).believed(0.8);
  seen.forecast->why = {
      {"refused all meals from {0} to {1}, big or small",
       2.1,
       {},
       {std::chrono::sys_days{Scenario::today()} - std::chrono::days{400}, Scenario::today()}}};
  for (const DateStyle style : all_date_styles) {
    seen.rules.wording.dates = style;
    CHECK(seen.told().why[1] ==
          "Refused all meals from " +
              day_words(Scenario::today() - std::chrono::days{400}, Scenario::today(), style) +
              " to " + day_words(Scenario::today(), Scenario::today(), style) + ", big or small.");
  }
}

TEST_CASE("where premoult is possible one small prey is offered and watched") {
  const auto said = Scenario{}.meal(20).believed(0.45).told();
  CHECK(said.task == Task::OfferOneSmall);
  CHECK(said.sentence == "Offer 1 cricket of about 5 mm and watch.");
  CHECK(Scenario{}.meal(20).believed(0.2).told().task == Task::Offer);
}

TEST_CASE("the forecast's hardening withholds as a recorded moult does") {
  CHECK(Scenario{}.meal(20).believed(0.1, 0.8).told().task == Task::Withhold);
  CHECK(Scenario{}.meal(20).believed(0.1, 0.1).told().task == Task::Offer);
  // Neither alone is above the threshold; together the danger is.
  CHECK_FALSE(offers(Scenario{}.meal(20).believed(0.4, 0.4).told()));
}

TEST_CASE("a moult that nobody saw is looked for, once in a while") {
  CHECK(Scenario{}.meal(20).believed(0.1, 0.1, 0.7).told().task == Task::LookForShed);
  CHECK(Scenario{}.meal(20).looked(1).believed(0.1, 0.1, 0.7).told().task == Task::Offer);
  CHECK(Scenario{}.meal(20).believed(0.1, 0.1, 0.2).told().task == Task::Offer);
}

TEST_CASE("without a forecast a sure sign or two refusals hold the record to be premoult") {
  CHECK_FALSE(offers(Scenario{}.meal(9).looked(1, {Sign::DarkAbdomen}).told()));
  CHECK_FALSE(offers(Scenario{}.meal(9).looked(1, {Sign::SealedIn}).told()));
  CHECK(offers(Scenario{}.meal(9).looked(1, {Sign::PlumpAbdomen}).told()) == false);  // not yet due
  CHECK(offers(Scenario{}.meal(12).looked(1, {Sign::PlumpAbdomen}).told()));
  CHECK_FALSE(offers(Scenario{}.meal(20).refusal(9).refusal(5).told()));
  CHECK(offers(Scenario{}.meal(20).refusal(9).told()));
  CHECK(Scenario{}.meal(40).refusal(28).refusal(22).told().task == Task::OfferOneSmall);
}

TEST_CASE("sluggishness counts only with another sign; alone it points to a health problem") {
  const auto alone = Scenario{}.meal(9).looked(1, {Sign::Sluggish}).believed(0.1).told();
  CHECK(alone.task == Task::LookCloser);
  CHECK(alone.health_flag);
  CHECK_FALSE(offers(alone));
  const auto with = Scenario{}.meal(9).looked(1, {Sign::Sluggish, Sign::DarkAbdomen}).believed(0.8);
  CHECK_FALSE(with.told().health_flag);
  CHECK_FALSE(Scenario{}.meal(9).looked(1).believed(0.1).told().health_flag);
}

TEST_CASE("dry air matters when a moult is near, and only then") {
  const auto dry = Scenario{}.meal(20).looked(1).humidity(35).believed(0.8).told();
  CHECK(dry.task == Task::MistAndCheckWater);
  CHECK(dry.sentence == "Mist and check the water. Offer nothing.");
  CHECK(Scenario{}.meal(20).looked(1).humidity(75).believed(0.8).told().task == Task::Withhold);
  CHECK_FALSE(also(Scenario{}.meal(20).humidity(35).believed(0.1).told(), Task::MistAndCheckWater));
  CHECK(Scenario{}.meal(20).looked(1).humidity(35, 9).believed(0.8).told().task == Task::Withhold);
}

TEST_CASE("a female on her sac is not disturbed until it is pulled") {
  auto guarding = Scenario{}.stage(Stage::Adult).meal(30).ago(20, EggSac{});
  CHECK(guarding.told().urgency == Urgency::LeaveAlone);
  guarding.ago(1, Pulled{});
  CHECK(guarding.told().task == Task::Offer);
}
