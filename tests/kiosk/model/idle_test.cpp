#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace std::chrono_literals;
using kiosk::ScreenName;

TEST_CASE("left alone, the kiosk goes back to the round and keeps what was half entered") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Kochiana brunnipes");
  kiosk.start();
  kiosk.does(kiosk::Show{ScreenName::Find});
  kiosk.does(kiosk::Typed{"k"});
  kiosk.does(kiosk::Show{ScreenName::Keypad});
  kiosk.does(kiosk::Typed{"t"});
  kiosk.scans(tub);
  kiosk.clock.advance(kiosk::idle_return - 1s);
  kiosk.does(kiosk::Tick{});
  CHECK(kiosk.model().screen == ScreenName::Tub);
  kiosk.clock.advance(2s);
  kiosk.does(kiosk::Tick{});
  CHECK(kiosk.model().screen == ScreenName::Round);
  CHECK_FALSE(kiosk.model().tub);
  CHECK(kiosk.model().find_words == "k");
  CHECK(kiosk.model().keypad == "T");
}

TEST_CASE("a card scanned after the kiosk went back asks for the tub again") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Kochiana brunnipes");
  kiosk.start();
  kiosk.scans(tub);
  kiosk.clock.advance(kiosk::idle_return + 1s);
  kiosk.does(kiosk::Tick{});
  kiosk.scans_card(Action::Took);
  CHECK(kiosk.notice().find("Scan a tub first") == 0);
  CHECK(kiosk.log_of(tub).empty());
}

TEST_CASE("what was saved while the overview was read is not lost from the open tub") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Kochiana brunnipes");
  kiosk.start();
  kiosk.scans(tub);
  const auto stale = kiosk::OverviewReady{{.collection = kiosk.model().collection}, {}};
  kiosk.does(kiosk::Record{Action::Refused});
  kiosk.does(stale);
  CHECK(shown_animal(kiosk.model())->refusals_since_meal == 1);
}
