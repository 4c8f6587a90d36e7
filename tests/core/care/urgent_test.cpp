// What cannot wait. Every rule has an example and its opposite. The trade facts here are common
// practice, no source.

#include "tests/core/care/scenario.hpp"

using namespace rackside;
using namespace rackside::tests;

TEST_CASE("an animal on its back is left entirely alone, and somebody looks in within a day") {
  const auto said = Scenario{}.meal(30).looked(0.2, {Sign::OnItsBack}).told();
  CHECK(said.task == Task::LeaveAlone);
  CHECK(said.urgency == Urgency::LeaveAlone);
  CHECK(said.urgent);
  CHECK(said.also.empty());
  CHECK(said.next_due == Scenario::today() + std::chrono::days{1});
  CHECK(Scenario{}.meal(30).looked(0.2).told().task == Task::Offer);
}

TEST_CASE("a moult that has taken longer than a day is urgent, a moult of some hours is not late") {
  const auto late = Scenario{}.looked(1.3, {Sign::OnItsBack}).looked(0.1, {Sign::OnItsBack}).told();
  CHECK(late.task == Task::HelpWithMoult);
  CHECK(late.urgent);
  CHECK(late.health_flag);
  CHECK(late.caution->find("not a diagnosis") != std::string::npos);
  const auto hours =
      Scenario{}.looked(0.4, {Sign::OnItsBack}).looked(0.1, {Sign::OnItsBack}).told();
  CHECK(hours.task == Task::LeaveAlone);
}

TEST_CASE("lying on its back is over when it moulted or was offered food since") {
  CHECK(Scenario{}.looked(5, {Sign::OnItsBack}).ago(4.5, Moulted{}).told().task ==
        Task::TakeOutShed);
  CHECK(Scenario{}.looked(12, {Sign::OnItsBack}).meal(9).told().task == Task::Offer);
}

TEST_CASE("prey beside a moulting animal comes out without touching the animal") {
  const auto said = Scenario{}
                        .ago(1, Offered{Outcome::LeftOvernight, "cricket"})
                        .looked(0.2, {Sign::OnItsBack})
                        .told();
  CHECK(said.task == Task::TakePreyFromMoult);
  CHECK(said.urgent);
  CHECK_FALSE(also(said, Task::LeaveAlone));
}

TEST_CASE("a shrivelled abdomen means water now, and after that a look whether it fills out") {
  auto dry = Scenario{}.ago(20, WaterFilled{}).meal(3).looked(0.1, {Sign::ShrivelledAbdomen});
  const auto said = dry.told();
  CHECK(said.task == Task::GiveWater);
  CHECK(said.urgent);
  CHECK(said.health_flag);
  REQUIRE(said.why.size() == 2);
  CHECK(said.why[1] == "Water was last filled 20 days ago.");
  dry.ago(0.05, WaterFilled{});
  CHECK(dry.told().task == Task::LookCloser);
  CHECK(Scenario{}.ago(20, WaterFilled{}).meal(3).looked(0.1).told().task ==
        Task::MistAndCheckWater);
}

TEST_CASE("prey left overnight comes out next morning, not before and not twice") {
  const Offered left{Outcome::LeftOvernight, "cricket"};
  const auto next_morning = Scenario{}.ago(0.6, left).told();
  CHECK(next_morning.task == Task::TakeOutPrey);
  CHECK(next_morning.urgency == Urgency::Due);
  CHECK_FALSE(next_morning.urgent);
  const auto same_day = Scenario{}.ago(0.1, left).told();
  CHECK(same_day.urgency == Urgency::Wait);
  CHECK(same_day.next_due == Scenario::today() + std::chrono::days{1});
  CHECK(Scenario{}.ago(1, left).ago(0.1, PreyRemoved{}).told().task == Task::Reoffer);
}

TEST_CASE("prey beside a soft animal is urgent on the same day") {
  const auto said =
      Scenario{}.ago(0.2, Offered{Outcome::LeftOvernight, "cricket"}).ago(0.1, Moulted{}).told();
  CHECK(said.task == Task::TakeOutPrey);
  CHECK(said.urgency == Urgency::Due);
  CHECK(said.urgent);
}

TEST_CASE("prey that nobody wrote off is taken to be gone after a while") {
  CHECK(Scenario{}.ago(40, Offered{Outcome::LeftOvernight, "cricket"}).told().task == Task::Offer);
}

TEST_CASE("a fresh moult still refusing after weeks is urgent, until somebody has looked") {
  auto fasting = Scenario{}.ago(35, Moulted{}).ago(33, ShedRemoved{}).refusal(20).refusal(5);
  fasting.believed(0.05);
  const auto said = fasting.told();
  CHECK(said.task == Task::RefusesAfterMoult);
  CHECK(said.urgent);
  CHECK(said.health_flag);
  fasting.looked(1);
  CHECK(fasting.told().task == Task::OfferOneSmall);
}

TEST_CASE(
    "no meal after a moult is not urgent when it ate, was not tried, or is in premoult again") {
  CHECK(Scenario{}.ago(35, Moulted{}).meal(20).refusal(5).believed(0.05).told().task ==
        Task::Offer);
  CHECK(Scenario{}.ago(35, Moulted{}).believed(0.05).told().task == Task::OfferOneSmall);
  CHECK(Scenario{}.ago(35, Moulted{}).refusal(20).refusal(5).believed(0.9).told().task ==
        Task::LookForShed);
  CHECK(Scenario{}.ago(15, Moulted{}).refusal(5).believed(0.05).told().task == Task::OfferOneSmall);
}
