// What the growth screen says.

#include "kiosk/view/growth_view.hpp"

#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using kiosk::view_growth;

namespace {

struct Room {
  TableKiosk kiosk;
  Code tub;
  Room() : tub(kiosk.house(1, "Omothymus violaceopes")) {
    kiosk.happened(tub, 35, Measured{Measure::LegSpan, {40}});
    kiosk.happened(tub, 30, ShedFound{});
    kiosk.happened(tub, 28, Measured{Measure::LegSpan, {50}});
    kiosk.start();
    kiosk.scans(tub);
    kiosk.does(kiosk::Show{kiosk::ScreenName::Growth});
  }
  void type(std::string_view digits) {
    for (const char c : digits) kiosk.does(kiosk::Typed{std::string(1, c)});
  }
};

}  // namespace

TEST_CASE("an animal's growth is told moult by moult, the latest first") {
  Room room;
  const auto view = view_growth(room.kiosk.model());
  REQUIRE(view.rows.size() == 2);
  CHECK(view.rows[0].leg_span == "50 mm");
  CHECK(view.rows[1] == kiosk::GrowthRow{"before", "", "40 mm", ""});
  REQUIRE(view.curves.size() == 1);
  CHECK(view.curves[0].word == "leg span");
  CHECK(view.curves[0].dots.size() == 2);
  CHECK(*view.curves[0].next == Approx(62.5));
  REQUIRE(view.sentences.size() == 2);
  CHECK(view.sentences[0].find("25 % a moult") != std::string::npos);
}

TEST_CASE("a measure that is typed lands in the records, and can be undone") {
  Room room;
  room.kiosk.does(kiosk::AskNumber{view_growth(room.kiosk.model()).carapace});
  room.type("17,5");
  room.kiosk.does(kiosk::Enter{});
  CHECK(room.kiosk.model().screen == kiosk::ScreenName::Growth);
  CHECK(room.kiosk.notice() == "Saved: carapace 17.5 mm.");
  CHECK(view_growth(room.kiosk.model()).rows[0].carapace == "17.5 mm");
  room.kiosk.does(kiosk::Record{Action::Undo});
  CHECK(view_growth(room.kiosk.model()).rows[0].carapace.empty());
}

TEST_CASE("a number that cannot be is told, saves nothing and stays to be corrected") {
  Room room;
  room.kiosk.does(kiosk::AskNumber{view_growth(room.kiosk.model()).leg_span});
  room.type("5400");
  room.kiosk.does(kiosk::Enter{});
  CHECK(room.kiosk.model().screen == kiosk::ScreenName::Number);
  CHECK(room.kiosk.notice() == "5400 cannot be. Nothing was saved; type it again.");
  CHECK(room.kiosk.log_of(room.tub).size() == 3);
  room.kiosk.does(kiosk::Erase{});
  room.kiosk.does(kiosk::Erase{});
  room.kiosk.does(kiosk::Enter{});
  CHECK(view_growth(room.kiosk.model()).rows[0].leg_span == "54 mm");
}

TEST_CASE("a half typed number is still there after another tub was scanned") {
  Room room;
  const Code other = room.kiosk.house(2, "Omothymus violaceopes");
  room.kiosk.start();
  room.kiosk.scans(room.tub);
  const auto question = view_growth(room.kiosk.model()).leg_span;
  room.kiosk.does(kiosk::AskNumber{question});
  room.type("6");
  room.kiosk.scans(other);
  CHECK(room.kiosk.model().screen == kiosk::ScreenName::Tub);
  room.kiosk.scans(room.tub);
  room.kiosk.does(kiosk::AskNumber{question});
  CHECK(room.kiosk.model().number->typed == "6");
}
