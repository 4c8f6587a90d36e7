// The walk along the racks: set out, scan in any order, stop, see what needs another look.

#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace std::chrono_literals;
using kiosk::ScreenName;

namespace {

// Four tubs that are due a meal.
struct Walk {
  TableKiosk kiosk;
  std::vector<Code> tubs;

  Walk() {
    for (int i = 1; i <= 4; ++i) {
      tubs.push_back(kiosk.house(i, "Kochiana brunnipes", {"A", "1", std::to_string(i)}));
      kiosk.happened(tubs.back(), 30, Offered{Outcome::Took, "cricket", 1, {}});
      kiosk.happened(tubs.back(), 1, WaterFilled{});
    }
    kiosk.start();
    kiosk.does(kiosk::Show{ScreenName::Carry});
    kiosk.does(kiosk::SetOut{});
  }
};

}  // namespace

TEST_CASE("setting out begins a round with what is due, and the log knows it") {
  Walk walk;
  REQUIRE(walk.kiosk.model().round);
  CHECK(walk.kiosk.model().screen == ScreenName::Round);
  CHECK(walk.kiosk.model().round->progress.due() == 4);
  CHECK(walk.kiosk.model().round->progress.done == 0);
  CHECK(walk.kiosk.log.read_kinds({"round started"}).value().size() == 1);
}

TEST_CASE("tubs count as done in whatever order they are scanned, and undone again by undo") {
  Walk walk;
  for (const std::size_t i : {std::size_t{2}, std::size_t{0}}) {
    walk.kiosk.scans(walk.tubs[i]);
    walk.kiosk.scans_card(Action::Took);
    walk.kiosk.clock.advance(1min);
  }
  CHECK(walk.kiosk.model().round->progress.done == 2);
  walk.kiosk.scans_card(Action::Undo);
  CHECK(walk.kiosk.model().round->progress.done == 1);
}

TEST_CASE("ending the round says what needs another look") {
  Walk walk;
  walk.kiosk.scans(walk.tubs[0]);
  walk.kiosk.scans_card(Action::Refused);
  walk.kiosk.does(kiosk::EndRound{});
  CHECK_FALSE(walk.kiosk.model().round);
  CHECK(walk.kiosk.model().screen == ScreenName::Summary);
  REQUIRE(walk.kiosk.model().summary);
  CHECK(walk.kiosk.model().summary->done == 1);
  CHECK(walk.kiosk.model().summary->refused == 1);
  CHECK(walk.kiosk.model().summary->look_again.size() == 4);  // one refused, three not reached
}

TEST_CASE("a round survives a restart and midnight") {
  Walk walk;
  walk.kiosk.scans(walk.tubs[0]);
  walk.kiosk.scans_card(Action::Took);
  walk.kiosk.clock.advance(8h);  // it is past midnight now
  walk.kiosk.start();
  REQUIRE(walk.kiosk.model().round);
  CHECK(walk.kiosk.model().round->progress.due() == 4);
  CHECK(walk.kiosk.model().round->progress.done == 1);
  walk.kiosk.scans(walk.tubs[1]);
  walk.kiosk.scans_card(Action::Refused);
  CHECK(walk.kiosk.model().round->progress.done == 2);
}

TEST_CASE("a round that was ended does not come back after a restart") {
  Walk walk;
  walk.kiosk.does(kiosk::EndRound{});
  walk.kiosk.start();
  CHECK_FALSE(walk.kiosk.model().round);
}
