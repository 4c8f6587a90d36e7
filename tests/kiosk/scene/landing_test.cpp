// A record that comes down onto the strip.

#include "kiosk/scene/landing.hpp"

#include "tests/fakes/fixed_clock.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;
using namespace std::chrono_literals;

namespace {

constexpr Box place{100, 200, 20, 20};

Scene with(const EventId& event) {
  const MarkAt mark{Mark::Taken, place, 2, Ink::Text};
  return {.items = {mark}, .targets = {}, .landing = LandingMark{event, mark}};
}

}  // namespace

TEST_CASE("a new record comes down onto its place within 120 ms and then rests") {
  CountingIds ids;
  Landing landing;
  landing.follow(with(ids.next_event()), 1000ms);
  double last = 1e9;
  for (auto now = 1000ms; now < 1120ms; now += 15ms) {
    const auto mark = landing.at(now);
    REQUIRE(mark);
    CHECK(mark->box.width < last);
    CHECK(mark->box.width >= place.width);
    CHECK(mark->box.middle() == place.middle());
    CHECK(landing.next_deadline(now) == now + 15ms);
    last = mark->box.width;
  }
  CHECK_FALSE(landing.at(1120ms));
  CHECK_FALSE(landing.next_deadline(1120ms));
}

TEST_CASE("a record lands once, however often its screen is composed anew") {
  CountingIds ids;
  Landing landing;
  const Scene scene = with(ids.next_event());
  landing.follow(scene, 0ms);
  landing.follow({}, 500ms);
  landing.follow(scene, 1000ms);
  CHECK_FALSE(landing.at(1000ms));
  landing.follow(with(ids.next_event()), 2000ms);
  CHECK(landing.at(2000ms));
}

TEST_CASE("without a new record nothing moves and nobody is woken for it") {
  Landing landing;
  landing.follow({}, 0ms);
  CHECK_FALSE(landing.at(0ms));
  CHECK_FALSE(landing.next_deadline(0ms));
}
