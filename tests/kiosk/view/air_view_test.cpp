// What the air screen says.

#include "kiosk/view/air_view.hpp"

#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using kiosk::NumberOf;
using kiosk::view_air;

namespace {

void enter(TableKiosk& kiosk, NumberOf what, const std::string& rack, std::string_view digits) {
  kiosk.does(kiosk::AskNumber{{.what = what, .rack = rack}});
  for (const char c : digits) kiosk.does(kiosk::Typed{std::string(1, c)});
  kiosk.does(kiosk::Enter{});
}

}  // namespace

TEST_CASE("a rack that was never read says so, and what is wanted") {
  TableKiosk kiosk;
  kiosk.house(1, "Encyocratella olivacea", {"A", "1", "1"});
  kiosk.start();
  const auto rows = view_air(kiosk.model());
  REQUIRE(rows.size() == 2);
  CHECK(rows[0].title == "the room");
  CHECK(rows[1].title == "rack A");
  CHECK(rows[1].temperature.reading == "not read");
  CHECK(rows[1].temperature.wanted == "20 °C or more");
  CHECK(rows[1].humidity.wanted == "50 % or more");
  CHECK(rows[1].dew.empty());
}

TEST_CASE("a reading is entered, told with its dew point, and judged") {
  TableKiosk kiosk;
  kiosk.house(1, "Encyocratella olivacea", {"A", "1", "1"});
  kiosk.start();
  kiosk.does(kiosk::Show{kiosk::ScreenName::Air});
  enter(kiosk, NumberOf::Temperature, "A", "25");
  CHECK(kiosk.model().screen == kiosk::ScreenName::Air);
  CHECK(kiosk.notice() == "Saved: 25.0 °C, rack A.");
  enter(kiosk, NumberOf::Humidity, "A", "60");
  auto row = view_air(kiosk.model())[1];
  CHECK(row.temperature.reading == "25.0 °C");
  CHECK(row.temperature.age == "just now");
  CHECK(row.humidity.reading == "60 %");
  // 25 C at 60 %: 16.7 C in common psychrometric tables.
  CHECK(row.dew == "dew point 17 °C");
  CHECK(row.off.empty());
  enter(kiosk, NumberOf::Temperature, "A", "17.5");
  row = view_air(kiosk.model())[1];
  CHECK(row.off == "Too cold.");
  CHECK(row.temperature.line.points.size() == 2);
}

TEST_CASE("a reading that was taken back leaves the one before it") {
  TableKiosk kiosk;
  kiosk.house(1, "Encyocratella olivacea", {"A", "1", "1"});
  kiosk.start();
  enter(kiosk, NumberOf::Temperature, "A", "24");
  enter(kiosk, NumberOf::Temperature, "A", "42");
  CHECK(view_air(kiosk.model())[1].temperature.reading == "42.0 °C");
  const auto warmth = [&] { return kiosk.model().warmth.at("A", {}).back().mean; };
  CHECK(warmth() == Celsius{33});
  kiosk.does(kiosk::Record{Action::Undo});
  CHECK(warmth() == Celsius{24});
  CHECK(view_air(kiosk.model())[1].temperature.reading == "24.0 °C");
  CHECK(kiosk.model().climate.at("A").temperature->value == Celsius{24});
  kiosk.start();
  CHECK(view_air(kiosk.model())[1].temperature.reading == "24.0 °C");
}

TEST_CASE("an old reading is not judged but asked for anew") {
  TableKiosk kiosk;
  kiosk.house(1, "Encyocratella olivacea", {"A", "1", "1"});
  kiosk.start();
  enter(kiosk, NumberOf::Temperature, "A", "15");
  kiosk.clock.advance(std::chrono::hours{24 * 5});
  kiosk.does(kiosk::Show{kiosk::ScreenName::Air});
  const auto row = view_air(kiosk.model())[1];
  CHECK(row.temperature.age == "5 days ago");
  CHECK(row.off == "Read the temperature.");
}
