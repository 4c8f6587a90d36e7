#include "core/round/round.hpp"

#include "tests/core/round/rack_room.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

constexpr double minute = 1.0 / (24 * 60);

// Three hungry animals on one shelf and the round that starts an hour before now.
struct Walk {
  RackRoom room;
  Round round;

  Walk() {
    for (int i = 1; i <= 3; ++i)
      room.tub(i, {"A", "1", std::to_string(i)}).happened(20, i, Offered{}).believed(i, 0);
    room.add(60 * minute, std::nullopt, RoundStarted{});
    round = last_round(room.log, kiosk_number(1)).value();
  }
  [[nodiscard]] RoundLog split() const { return split_at(round, room.log); }
  [[nodiscard]] DayPlan plan() const {
    return plan_day(fold_collection(split().before), room.forecasts, {}, {}, round.started.moment);
  }
  [[nodiscard]] Progress so_far() const { return progress(plan(), split().since, round.started); }
};

}  // namespace

TEST_CASE("a round is done tub by tub, in whatever order the tubs are scanned") {
  Walk walk;
  CHECK(walk.so_far().due() == 3);
  CHECK(walk.so_far().done == 0);
  walk.room.happened(50 * minute, 3, Offered{});
  walk.room.happened(40 * minute, 1, Offered{Outcome::Refused});
  CHECK(walk.so_far().done == 2);
  CHECK(walk.so_far().left() == numbered({2}));
}

TEST_CASE("the plan of a round stays as it was at its start") {
  Walk walk;
  walk.room.happened(50 * minute, 2, Offered{});
  CHECK(animals_of(walk.plan().due) == numbered({1, 2, 3}));
  // Entered during the round for a day before it: the start did not know it.
  walk.room.happened(3, 2, Offered{}).log.back().written =
      RackRoom::days_ago(30 * minute).moment.utc;
  CHECK(animals_of(walk.plan().due) == numbered({1, 2, 3}));
}

TEST_CASE("a tap that is taken back opens the tub again") {
  Walk walk;
  const EventId tapped = walk.room.add(50 * minute, 2, Offered{}).id;
  CHECK(walk.so_far().done == 1);
  walk.room.happened(49 * minute, 2, Retracted{tapped});
  CHECK(walk.so_far().done == 0);
}

TEST_CASE("a round survives a restart and midnight: nothing is kept but the log") {
  Walk walk;
  walk.room.happened(50 * minute, 1, Offered{});
  const auto next_day = last_round(walk.room.log, kiosk_number(1));
  REQUIRE(next_day);
  CHECK(*next_day == walk.round);
  CHECK_FALSE(next_day->ended);
  auto& last = walk.room.add(-0.8, 2, Offered{});  // after midnight
  CHECK(last.when.moment.day() > walk.round.started.moment.day());
  CHECK(walk.so_far().left() == numbered({3}));
}

TEST_CASE("an ended round is over, one whose start was taken back never was") {
  Walk walk;
  const EventId started = walk.round.id;
  walk.room.add(10 * minute, std::nullopt, RoundEnded{started});
  CHECK(last_round(walk.room.log, kiosk_number(1))->ended == RackRoom::days_ago(10 * minute));
  walk.room.add(5 * minute, std::nullopt, Retracted{started});
  CHECK_FALSE(last_round(walk.room.log, kiosk_number(1)));
}

TEST_CASE("each kiosk walks its own round") {
  Walk walk;
  CHECK_FALSE(last_round(walk.room.log, kiosk_number(2)));
}

TEST_CASE(
    "an offer is answered by any outcome and by a sign that speaks against it, not by water") {
  CHECK(answers(Offered{Outcome::Refused}, Task::Offer));
  CHECK(answers(Looked{{Sign::DarkAbdomen}}, Task::Offer));
  CHECK(answers(ShedFound{}, Task::OfferOneSmall));
  CHECK_FALSE(answers(Looked{}, Task::Offer));
  CHECK_FALSE(answers(Misted{}, Task::Offer));
  CHECK_FALSE(answers(Noted{}, Task::Offer));
}

TEST_CASE("a look is answered by looking, left prey by taking it out or seeing it eaten") {
  CHECK(answers(Looked{}, Task::LookForShed));
  CHECK(answers(PreyRemoved{}, Task::TakeOutPrey));
  CHECK(answers(Offered{Outcome::Took}, Task::TakeOutPrey));
  CHECK_FALSE(answers(Offered{Outcome::Refused}, Task::TakeOutPrey));
  CHECK_FALSE(answers(ShedFound{}, Task::TakeOutShed));
  CHECK(answers(ShedRemoved{}, Task::TakeOutShed));
}

TEST_CASE("extras of a visit that nobody recorded stay open without holding up the round") {
  Walk walk;
  walk.room.happened(30, 1, Misted{}).log.back().written = RackRoom::days_ago(30).moment.utc;
  walk.room.happened(50 * minute, 1, Offered{});
  const auto done = walk.so_far();
  CHECK(done.tubs[0].done);
  CHECK(done.tubs[0].still_open == std::vector{Task::MistAndCheckWater});
}

TEST_CASE("the time that is left is told at the pace so far, once there is one") {
  Walk walk;
  for (int i = 4; i <= 10; ++i) {
    walk.room.tub(i, {"A", "1", std::to_string(i)}).happened(20, i, Offered{}).believed(i, 0);
    for (auto& event : walk.room.log)
      if (event.id > walk.round.id)
        event.written = std::min(event.written, RackRoom::days_ago(20).moment.utc);
  }
  walk.room.happened(58 * minute, 1, Offered{}).happened(56 * minute, 2, Offered{});
  CHECK_FALSE(walk.so_far().remaining);
  walk.room.happened(54 * minute, 3, Offered{});
  REQUIRE(walk.so_far().due() == 10);
  CHECK(walk.so_far().remaining == std::chrono::minutes{14});  // 6 minutes for 3, 7 are left
}
