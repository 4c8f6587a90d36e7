// What the shelf map says.

#include "kiosk/view/map_view.hpp"

#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using kiosk::view_cell;
using kiosk::view_rack;

TEST_CASE("a rack is told shelf by shelf, and a place without a tub stays a gap") {
  TableKiosk kiosk;
  const Code last = kiosk.house(1, "Haplocosmia himalayana", {"A", "10", "2"});
  const Code first = kiosk.house(2, "Haplocosmia himalayana", {"A", "2", "1"});
  const Code third = kiosk.house(3, "Haplocosmia himalayana", {"A", "2", "3"});
  kiosk.house(4, "Haplocosmia himalayana", {"B", "1", "1"});
  kiosk.start();
  const auto shelves = view_rack(kiosk.model(), "A");
  REQUIRE(shelves.size() == 2);
  CHECK(shelves[0].shelf == "2");
  CHECK(shelves[0].places == std::vector<std::optional<Code>>{first, std::nullopt, third});
  CHECK(shelves[1].places == std::vector<std::optional<Code>>{last});
}

TEST_CASE("positions that are names, shared or far apart leave no gaps") {
  TableKiosk kiosk;
  kiosk.house(1, "Haplocosmia himalayana", {"A", "1", "left"});
  kiosk.house(2, "Haplocosmia himalayana", {"A", "1", "right"});
  kiosk.house(3, "Haplocosmia himalayana", {"A", "2", "4"});
  kiosk.house(4, "Haplocosmia himalayana", {"A", "2", "4"});
  kiosk.house(5, "Haplocosmia himalayana", {"A", "3", "1"});
  kiosk.house(6, "Haplocosmia himalayana", {"A", "3", "900"});
  kiosk.start();
  for (const auto& shelf : view_rack(kiosk.model(), "A")) CHECK(shelf.places.size() == 2);
}

TEST_CASE("a cell says in two letters how its animal is, and whether it is due") {
  TableKiosk kiosk;
  const Code fed = kiosk.house(1, "Orphnaecus philippinus", {"A", "1", "1"});
  const Code soft = kiosk.house(2, "Orphnaecus philippinus", {"A", "1", "2"});
  const Code empty = kiosk.house(3, "Orphnaecus philippinus", {"A", "1", "3"});
  kiosk.happened(fed, 1, Offered{Outcome::Took, "cricket"});
  kiosk.happened(soft, 1, Moulted{});
  kiosk.happened(empty, 1, Died{});
  kiosk.start();
  kiosk.scans(fed);
  CHECK(view_cell(kiosk.model(), fed) == kiosk::MapCell{.position = "1",
                                                        .letters = "Fe",
                                                        .word = "feeding",
                                                        .mark = kiosk::Mark::Taken,
                                                        .due = false,
                                                        .last = true});
  CHECK(view_cell(kiosk.model(), soft).letters == "Ha");
  CHECK_FALSE(view_cell(kiosk.model(), soft).last);
  CHECK(view_cell(kiosk.model(), empty).letters == "Em");
}

TEST_CASE("all racks are told with how many tubs stand there and how many are due") {
  TableKiosk kiosk;
  const Code fed = kiosk.house(1, "Orphnaecus philippinus", {"A", "1", "1"});
  kiosk.house(2, "Orphnaecus philippinus", {"A", "1", "2"});
  kiosk.house(3, "Orphnaecus philippinus", {"", "", ""});
  kiosk.happened(fed, 1, Offered{Outcome::Took, "cricket"});
  kiosk.start();
  kiosk.does(kiosk::Show{kiosk::ScreenName::Map});
  const auto racks = view_racks(kiosk.model());
  REQUIRE(racks.size() == 2);
  CHECK(racks[0].title == "rack A");
  CHECK(racks[0].detail == "2 tubs, 1 due");
  CHECK(racks[1].title == "no rack given");
  CHECK(racks[1].detail == "1 tub, 1 due");
}
