#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using kiosk::ScreenName;

namespace {

struct Room {
  TableKiosk kiosk;
  Code tub;
  Room() : tub(kiosk.house(1, "Kochiana brunnipes")) { kiosk.start(); }
  void show(ScreenName screen) { kiosk.does(kiosk::Show{screen}); }
  void close() { kiosk.does(kiosk::Close{}); }
  [[nodiscard]] ScreenName screen() const { return kiosk.model().screen; }
};

}  // namespace

TEST_CASE("back leads the way one came, and at its end to the round") {
  Room room;
  room.show(ScreenName::Drawer);
  room.show(ScreenName::Find);
  room.kiosk.scans(room.tub);
  room.show(ScreenName::Records);
  for (const auto screen : {ScreenName::Tub, ScreenName::Find, ScreenName::Drawer,
                            ScreenName::Round, ScreenName::Round}) {
    room.close();
    CHECK(room.screen() == screen);
  }
}

TEST_CASE("tub after tub is one step back") {
  Room room;
  const Code other = room.kiosk.house(2, "Orphnaecus philippinus");
  room.kiosk.start();
  for (const Code& tub : {room.tub, other, room.tub, other}) room.kiosk.scans(tub);
  room.close();
  CHECK(room.screen() == ScreenName::Round);
}

TEST_CASE("a keypad whose code was opened is not come back to") {
  Room room;
  room.show(ScreenName::Keypad);
  for (const char c : std::string(room.tub.text()))
    room.kiosk.does(kiosk::Typed{std::string(1, c)});
  REQUIRE(room.screen() == ScreenName::Tub);
  room.close();
  CHECK(room.screen() == ScreenName::Round);
}

TEST_CASE("going to a screen that is on the way back is going back") {
  Room room;
  room.show(ScreenName::Drawer);
  room.show(ScreenName::Setup);
  room.show(ScreenName::Drawer);
  room.close();
  CHECK(room.screen() == ScreenName::Round);
}

TEST_CASE("wherever one walks, a few steps back are the round and close the tub") {
  rc::prop("", [] {
    Room room;
    const auto steps = *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 6));
    for (const int step : steps) {
      if (step == 0) room.kiosk.scans(room.tub);
      if (step == 1) room.show(ScreenName::Drawer);
      if (step == 2) room.show(ScreenName::Find);
      if (step == 3) room.show(ScreenName::Keypad);
      if (step == 4) room.close();
      if (step == 5) room.show(ScreenName::Setup);
    }
    for (int i = 0; i < 8; ++i) room.close();
    RC_ASSERT(room.screen() == ScreenName::Round);
    RC_ASSERT(!room.kiosk.model().tub);
  });
}

TEST_CASE("a setting holds at once, and one that could not be kept is told") {
  Room room;
  kiosk::Settings night;
  night.palette = kiosk::PaletteName::Night;
  room.kiosk.does(kiosk::SetUp{night});
  CHECK(room.kiosk.model().settings == night);
  CHECK(room.kiosk.notice().empty());
  room.kiosk.settings_not_kept = Error{ErrorKind::Full, "There is no room left.", {}};
  room.kiosk.does(kiosk::SetUp{});
  CHECK(room.kiosk.notice() == "There is no room left.");
  CHECK(room.kiosk.model().settings == kiosk::Settings{});
}
