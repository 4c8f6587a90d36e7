// The keeper's PIN at the kiosk: what it holds up, for how long it lasts, what it never says.

#include "core/event/details_json.hpp"
#include "kiosk/model/permission.hpp"
#include "tests/frame.hpp"
#include "tests/kiosk/model/staffed_kiosk.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;
using namespace std::chrono_literals;
using Catch::Matchers::Contains;

namespace {

struct AtTheTub : StaffedKiosk {
  AtTheTub() {
    scans_badge("Ines");
    scans(tub);
  }
};

}  // namespace

TEST_CASE("what the PIN held up goes on when it was given, where it was wanted") {
  AtTheTub kiosk;
  kiosk.does(Record{Action::Died});
  REQUIRE(kiosk.model().screen == ScreenName::Pin);
  kiosk.types_pin("7294");
  CHECK(kiosk.model().screen == ScreenName::Tub);
  CHECK(kiosk.log_of(kiosk.tub) == std::vector<std::string>{"misted", "died"});
}

TEST_CASE("nobody in particular is first asked who they are, then for the PIN") {
  StaffedKiosk kiosk;
  kiosk.does(Show{ScreenName::Setup});
  CHECK(kiosk.model().screen == ScreenName::Who);
  kiosk.does(PickPerson{"Ines"});
  CHECK(kiosk.model().screen == ScreenName::Pin);
  kiosk.types_pin("7294");
  CHECK(kiosk.model().screen == ScreenName::Setup);
}

TEST_CASE("wrong tries are told, then waited for, and the right PIN is not looked at meanwhile") {
  AtTheTub kiosk;
  kiosk.does(Record{Action::Died});
  kiosk.types_pin("1111");
  CHECK(kiosk.notice() == "That was not it. Try again.");
  kiosk.types_pin("1112");
  kiosk.types_pin("1113");
  CHECK(kiosk.notice() == "That was not it. In 30 seconds it can be tried again.");
  kiosk.types_pin("7294");
  CHECK(kiosk.notice() == "Too many tries. In 30 seconds it can be tried again.");
  CHECK(kiosk.log_of(kiosk.tub) == std::vector<std::string>{"misted"});
  kiosk.pin.uptime += 31s;
  kiosk.types_pin("7294");
  CHECK(kiosk.log_of(kiosk.tub) == std::vector<std::string>{"misted", "died"});
}

TEST_CASE("a PIN that was given lasts while one goes on working, not over a pause, not for ever") {
  const auto still_given = [](auto&& passes) {
    AtTheTub kiosk;
    kiosk.gives_pin();
    passes(kiosk);
    kiosk.does(Show{ScreenName::Setup});
    return kiosk.model().screen == ScreenName::Setup;
  };
  CHECK(still_given([](auto&) {}));
  CHECK(still_given([](auto& kiosk) {
    for (int i = 0; i < 3; ++i) {
      kiosk.clock.advance(4min);
      kiosk.does(Turn{0});
    }
  }));
  CHECK_FALSE(still_given([](auto& kiosk) { kiosk.clock.advance(idle_return); }));
  CHECK_FALSE(still_given([](auto& kiosk) {
    for (int i = 0; i < 4; ++i) {
      kiosk.clock.advance(4min);
      kiosk.does(Turn{0});
    }
  }));
  // A clock that was set says nothing about how long ago the PIN was given.
  for (const auto by : {-7 * 24h, 7 * 24h})
    CHECK_FALSE(still_given([by](auto& kiosk) { kiosk.clock.advance(by); }));
  CHECK_FALSE(still_given([](auto& kiosk) { kiosk.scans_badge("Oskar"); }));
}

TEST_CASE("nobody leaves the program without the PIN, and the service stops it without asking") {
  AtTheTub kiosk;
  kiosk.does(Leave{});
  CHECK_FALSE(kiosk.has_quit);
  CHECK(kiosk.model().screen == ScreenName::Pin);
  kiosk.does(Stop{});
  CHECK(kiosk.has_quit);
}

TEST_CASE("a keeper standing by lets an assistant's kiosk be left") {
  StaffedKiosk kiosk;
  kiosk.scans_badge("Oskar");
  kiosk.does(Leave{});
  kiosk.types_pin("7294");
  CHECK(kiosk.has_quit);
}

TEST_CASE("a PIN whose file cannot be read lets nobody in") {
  StaffedKiosk kiosk;
  kiosk.pin.broken = Error{ErrorKind::Broken, "The file with the PIN cannot be read.", ""};
  kiosk.start();
  kiosk.scans_badge("Ines");
  kiosk.does(Show{ScreenName::Setup});
  REQUIRE(kiosk.model().screen == ScreenName::Pin);
  kiosk.types_pin("7294");
  CHECK(kiosk.notice() == "The file with the PIN cannot be read.");
  CHECK(kiosk.model().screen == ScreenName::Pin);
}

TEST_CASE("where the PIN was lost, a keeper sets another, and an assistant cannot") {
  StaffedKiosk kiosk;
  kiosk.pin.pin.reset();
  kiosk.start();
  kiosk.scans_badge("Oskar");
  kiosk.does(Leave{});
  CHECK_THAT(kiosk.notice(), Contains("No PIN is set here"));
  kiosk.scans_badge("Ines");
  kiosk.does(Show{ScreenName::Setup});
  kiosk.types_pin("60315");
  kiosk.types_pin("60315");
  CHECK(kiosk.pin.pin == "60315");
  CHECK(kiosk.model().screen == ScreenName::Setup);
}

TEST_CASE("no digit of a PIN is ever told, or written into the log") {
  AtTheTub kiosk;
  std::string told;
  kiosk.does(Leave{});
  for (const std::string tried : {"7831", "90417", "7294"}) {
    kiosk.types_pin(tried);
    told += kiosk.notice();
  }
  for (const Event& event : kiosk.everything()) told += details_to_json(event.details) + event.note;
  for (const std::string digits : {"7831", "90417", "7294"})
    CHECK(told.find(digits) == std::string::npos);
}
