// Two weeks of somebody who stands in and makes every mistake there is, through the kiosk; then the
// keeper comes back.

#include <algorithm>
#include <random>

#include "core/overview/return_reading.hpp"
#include "kiosk/view/tub_view.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"
#include "tests/kiosk/model/staffed_kiosk.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

constexpr int fortnight = 14;
constexpr std::chrono::hours a_day{24};

struct Stay : StaffedKiosk {
  std::mt19937 random;
  std::vector<Code> tubs{tub, other_tub};
  std::vector<Day> skipped;
  int kept = 0, undone = 0, flagged = 0;

  explicit Stay(unsigned seed) : random(seed) {
    for (int i = 3; i <= 6; ++i) tubs.push_back(house(i, "Neoholothele incei"));
    const Day today = clock.now().day();
    sets(CoverPlanned{"Oskar", today, today + std::chrono::days{fortnight - 1}, {}});
    start();
  }
  bool chance(double p) { return std::bernoulli_distribution(p)(random); }
  Action any_tile() {
    const auto tiles = view_tub(model()).tiles;
    REQUIRE_FALSE(tiles.empty());
    return tiles[std::uniform_int_distribution<std::size_t>(0, tiles.size() - 1)(random)].action;
  }
  void taps(Action action) {
    clock.advance(std::chrono::seconds{20});
    does(Record{action});
  }
  // The wrong tile, and mostly it is noticed.
  void visit(const Code& at) {
    scans(at);
    if (chance(0.2)) {
      taps(any_tile());
      taps(Action::Undo);
      ++undone;
    }
    taps(any_tile());
    ++kept;
    if (chance(0.1)) {
      does(Ask{AskWrong{at}});
      does(AnswerWith{"It looks strange."});
      ++flagged;
    }
    if (chance(0.2)) does(Record{Action::Died});
  }
  void day(bool power_fails) {
    scans_badge("Oskar");
    does(SetOut{});
    for (std::size_t i = 0; i < tubs.size(); ++i) {
      if (chance(0.2)) scans(tubs[(i + 1) % tubs.size()]);
      visit(tubs[i]);
      if (power_fails && i == 2) {
        start();
        scans_badge("Oskar");
      }
    }
    does(EndRound{});
  }
};

int count_of_notes(const ReturnReport& report) {
  int count = 0;
  for (const TubReturn& tub : report.tubs) count += static_cast<int>(tub.flags.size());
  return count;
}

}  // namespace

TEST_CASE("after a fortnight full of mistakes everything is still there, and told as it was") {
  for (const unsigned seed : {1U, 2U, 3U}) {
    Stay stay(seed);
    const auto before = stay.everything();
    for (int i = 0; i < fortnight; ++i) {
      if (i != 0 && stay.chance(0.3))
        stay.skipped.push_back(stay.clock.now().day());
      else
        stay.day(i % 4 == 0);
      // To the same hour of the next day.
      const auto past = stay.clock.now().utc.time_since_epoch() % a_day;
      stay.clock.advance(a_day - past + std::chrono::hours{12});
    }
    const auto after = stay.everything();
    const auto gone = taken_back(after);
    for (const Event& event : before) {
      CHECK(std::ranges::find(after, event) != after.end());
      CHECK_FALSE(gone.contains(event.id));
    }
    CHECK(std::ranges::none_of(
        after, [](const Event& e) { return std::holds_alternative<Died>(e.details); }));
    CHECK(static_cast<int>(gone.size()) == stay.undone);
    const auto report = read_return(stay.log, {"Oskar", {}}, stay.clock.now()).value().report;
    CHECK(report.silent_days == stay.skipped);
    CHECK(count_of_notes(report) == stay.flagged);
    CHECK(stay.flagged > 0);
    CHECK(stay.undone > 0);
    CHECK(report.tubs.size() == stay.tubs.size());
    // What was their cover is over: the badge opens nothing now.
    stay.scans_badge("Oskar");
    CHECK_THAT(stay.notice(), Catch::Matchers::StartsWith("Your cover ended"));
  }
}
