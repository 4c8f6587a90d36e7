// What the tub screen says, word by word.

#include "kiosk/view/tub_view.hpp"

#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using rackside::kiosk::view_records;
using rackside::kiosk::view_tub;

TEST_CASE("a tub tells who lives where, and its records, the latest first") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Kochiana brunnipes", {"A", "2", "14"});
  kiosk.happened(tub, 9, Offered{Outcome::Took, "cricket", 2, Millimetres{8}});
  kiosk.happened(tub, 2, Offered{Outcome::Refused, "roach", 1, {}});
  kiosk.start();
  kiosk.scans(tub);
  const auto view = view_tub(kiosk.model());
  CHECK(view.place == "rack A, shelf 2, position 14");
  CHECK(view.code == tub.grouped());
  CHECK(view.species == "Kochiana brunnipes");
  CHECK(view.who == "k1");
  CHECK_FALSE(view.state.empty());
  CHECK_FALSE(view.task.empty());
  REQUIRE(view.records.size() == 3);
  CHECK(view.records[0].words == "refused roach");
  CHECK(view.records[1].words == "took 2 crickets, 8 mm");
  CHECK(view.records[2].words == "came here");
  CHECK_FALSE(view.records[2].can_take_back);
}

TEST_CASE("an entry that was taken back stays in the records, struck through") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Kochiana brunnipes");
  kiosk.start();
  kiosk.scans(tub);
  kiosk.does(kiosk::Record{Action::ShedFound});
  CHECK(view_tub(kiosk.model()).undo == "shed found");
  kiosk.does(kiosk::Record{Action::Undo});
  const auto records = view_records(kiosk.model());
  REQUIRE(records.size() == 2);
  CHECK(records[0].words == "shed found");
  CHECK(records[0].taken_back);
  CHECK_FALSE(records[0].can_take_back);
  CHECK_FALSE(view_tub(kiosk.model()).undo);
}

TEST_CASE("a tub without an animal says so and has no tiles") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Kochiana brunnipes");
  kiosk.happened(tub, 3, Died{});
  kiosk.start();
  kiosk.scans(tub);
  const auto view = view_tub(kiosk.model());
  CHECK(view.state == "Empty: it died 3 days ago");
  CHECK(view.tiles.empty());
}

TEST_CASE("two animals in one tub are told apart") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Kochiana brunnipes");
  const Code other = kiosk.house(2, "Neoholothele incei");
  kiosk.happened(other, 1, Rehoused{tub});
  kiosk.start();
  kiosk.scans(tub);
  CHECK(view_tub(kiosk.model()).neighbours == "1 of 2 here");
  const std::string first = view_tub(kiosk.model()).species;
  kiosk.does(kiosk::NextResident{});
  CHECK(view_tub(kiosk.model()).neighbours == "2 of 2 here");
  CHECK(view_tub(kiosk.model()).species != first);
  kiosk.does(kiosk::Record{Action::Took});
  CHECK(kiosk.log_of(other).back() == "offered");
}
