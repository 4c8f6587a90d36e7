#include "kiosk/camera/view_watch.hpp"

#include "tests/frame.hpp"
#include "tests/generators/symbols.hpp"

using namespace rackside;

namespace {

Code code_number(int number) {
  tests::Random random(static_cast<std::uint64_t>(number));
  return tests::random_code(random);
}

Sighting sighting(const Code& code) { return {code, {}}; }
Sighting stranger() { return {failure(ErrorKind::NotOurs, "not ours"), {}}; }

const Code tub = code_number(1), neighbour = code_number(2);

// What is opened at `at` when these are in view; none for nothing.
struct Watch {
  ViewWatch watch;
  std::optional<Code> at(int milliseconds, std::vector<Sighting> sightings) {
    const auto shown = watch.shown(sightings, ViewTime{milliseconds});
    if (!shown || !*shown) return std::nullopt;
    return **shown;
  }
};

}  // namespace

TEST_CASE("a code that comes into view opens at once, and once only while it is held") {
  Watch watch;
  CHECK(watch.at(0, {sighting(tub)}) == tub);
  for (int time = 100; time < 10'000; time += 100) CHECK_FALSE(watch.at(time, {sighting(tub)}));
}

TEST_CASE("frames in which it is not read do not make a held code open again") {
  Watch watch;
  CHECK(watch.at(0, {sighting(tub)}) == tub);
  for (int time = 100; time < 900; time += 100) CHECK_FALSE(watch.at(time, {}));
  CHECK_FALSE(watch.at(900, {sighting(tub)}));
}

TEST_CASE("a code shown again after leaving opens again") {
  Watch watch;
  CHECK(watch.at(0, {sighting(tub)}) == tub);
  CHECK_FALSE(watch.at(1200, {}));
  CHECK(watch.at(1300, {sighting(tub)}) == tub);
}

TEST_CASE("another code opens at once when the first has left, even within its absence") {
  Watch watch;
  CHECK(watch.at(0, {sighting(tub)}) == tub);
  CHECK_FALSE(watch.at(200, {sighting(neighbour)}));
  CHECK(watch.at(500, {sighting(neighbour)}) == neighbour);
}

TEST_CASE("of two codes in view the nearest opens, and a wavering hand opens nothing twice") {
  Watch watch;
  CHECK(watch.at(0, {sighting(tub), sighting(neighbour)}) == tub);
  for (int time = 100; time < 3000; time += 200) {
    CHECK_FALSE(watch.at(time, {sighting(neighbour), sighting(tub)}));
    CHECK_FALSE(watch.at(time + 100, {sighting(tub), sighting(neighbour)}));
  }
}

TEST_CASE("the second of two codes opens when it stays nearest to the aim") {
  Watch watch;
  CHECK(watch.at(0, {sighting(tub), sighting(neighbour)}) == tub);
  CHECK_FALSE(watch.at(100, {sighting(neighbour), sighting(tub)}));
  CHECK_FALSE(watch.at(300, {sighting(neighbour), sighting(tub)}));
  CHECK(watch.at(400, {sighting(neighbour), sighting(tub)}) == neighbour);
}

TEST_CASE("a stranger's label is refused once while it is in view") {
  ViewWatch watch;
  const auto first = watch.shown({stranger()}, ViewTime{0});
  REQUIRE(first);
  CHECK(first->error().kind == ErrorKind::NotOurs);
  CHECK_FALSE(watch.shown({stranger()}, ViewTime{100}));
  CHECK_FALSE(watch.shown({}, ViewTime{600}));
  CHECK_FALSE(watch.shown({stranger()}, ViewTime{1000}));
  CHECK_FALSE(watch.shown({}, ViewTime{2500}));
  CHECK(watch.shown({stranger()}, ViewTime{2600}));
}

TEST_CASE("a stranger's label beside one of ours is passed over") {
  Watch watch;
  CHECK(watch.at(0, {stranger(), sighting(tub)}) == tub);
  CHECK_FALSE(watch.at(100, {stranger(), sighting(tub)}));
}
