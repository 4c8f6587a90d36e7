// Somebody who is not a keeper at a tub.

#include <algorithm>

#include "kiosk/view/tub_view.hpp"
#include "tests/frame.hpp"
#include "tests/kiosk/model/staffed_kiosk.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

std::vector<Action> tiles_of(const StaffedKiosk& kiosk) {
  std::vector<Action> actions;
  for (const Tile& tile : view_tub(kiosk.model()).tiles) actions.push_back(tile.action);
  return actions;
}

}  // namespace

TEST_CASE("a stand-in finds one thing to do and two to four tiles that do not move") {
  StaffedKiosk kiosk;
  kiosk.scans_badge("Oskar");
  kiosk.scans(kiosk.tub);
  const auto view = view_tub(kiosk.model());
  CHECK(view.plain);
  CHECK_THAT(view.state, Catch::Matchers::EndsWith("."));
  CHECK(view.tiles.size() >= 2);
  CHECK(view.tiles.size() <= 4);
  const auto before = tiles_of(kiosk);
  CHECK(std::ranges::find(before, Action::Died) == before.end());
  kiosk.does(Record{before.front()});
  CHECK(tiles_of(kiosk) == before);
  CHECK(view_tub(kiosk.model()).undo);
}

TEST_CASE("a keeper finds the whole screen at the same tub") {
  StaffedKiosk kiosk;
  kiosk.scans_badge("Ines");
  kiosk.scans(kiosk.tub);
  CHECK_FALSE(view_tub(kiosk.model()).plain);
  CHECK(tiles_of(kiosk).size() > 4);
}

TEST_CASE("something wrong is kept in the words of whoever saw it") {
  StaffedKiosk kiosk;
  kiosk.scans_badge("Oskar");
  kiosk.scans(kiosk.tub);
  kiosk.does(Ask{AskWrong{kiosk.tub}});
  kiosk.does(AnswerWith{"  "});
  CHECK(kiosk.model().screen == ScreenName::Words);
  kiosk.does(AnswerWith{"It drags a leg."});
  CHECK(kiosk.model().screen == ScreenName::Tub);
  CHECK_THAT(kiosk.notice(), Catch::Matchers::StartsWith("Saved. The keeper will see it"));
  const Event last = kiosk.everything().back();
  CHECK(std::holds_alternative<Flagged>(last.details));
  CHECK(last.note == "It drags a leg.");
  CHECK(last.by == "Oskar");
  CHECK(last.animal == kiosk.animal_of(kiosk.tub));
  kiosk.does(Record{Action::Undo});
  CHECK(kiosk.log_of(kiosk.tub) == std::vector<std::string>{"misted"});
}

TEST_CASE("whom to call stands beside what was saved, where the keeper has said it") {
  StaffedKiosk kiosk;
  kiosk.sets(ContactSet{ContactKind::Keeper, "Ines", "020 7946 0018"});
  kiosk.start();
  kiosk.scans_badge("Oskar");
  kiosk.scans(kiosk.tub);
  kiosk.does(Ask{AskWrong{kiosk.tub}});
  kiosk.does(AnswerWith{"The lid is cracked."});
  CHECK_THAT(kiosk.notice(), Catch::Matchers::Contains("call Ines, 020 7946 0018, if"));
}

TEST_CASE("half an answer about one tub is none about another") {
  StaffedKiosk kiosk;
  kiosk.scans_badge("Oskar");
  kiosk.scans(kiosk.tub);
  kiosk.does(Ask{AskWrong{kiosk.tub}});
  kiosk.does(Typed{"a"});
  kiosk.scans(kiosk.other_tub);
  kiosk.does(Ask{AskWrong{kiosk.other_tub}});
  CHECK(kiosk.model().asking->text.empty());
}

TEST_CASE("a badge opens the kiosk on the days of its cover, and else says which they are") {
  for (const int begins_in : {1, 0, -9}) {
    StaffedKiosk kiosk;
    const Day first = kiosk.clock.now().day() + std::chrono::days{begins_in};
    kiosk.sets(CoverPlanned{"Oskar", first, first + std::chrono::days{7}, {}});
    kiosk.start();
    kiosk.scans_badge("Oskar");
    INFO("begins in " << begins_in << " days: " << kiosk.notice());
    CHECK((kiosk.model().by == "Oskar") == (begins_in == 0));
    if (begins_in > 0) CHECK_THAT(kiosk.notice(), Catch::Matchers::StartsWith("Your cover begins"));
    if (begins_in < 0) CHECK_THAT(kiosk.notice(), Catch::Matchers::StartsWith("Your cover ended"));
    kiosk.does(PickPerson{"Oskar"});
    CHECK((kiosk.model().by == "Oskar") == (begins_in == 0));
    kiosk.scans_badge("Ines");
    CHECK(kiosk.model().by == "Ines");
  }
}
