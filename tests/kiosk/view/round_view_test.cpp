// The list of the round, of which a page at a time is put into words.

#include "kiosk/view/round_view.hpp"

#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

// Four tubs that are due on two shelves, and one that waits.
struct Racks {
  TableKiosk kiosk;
  std::vector<Code> tubs;

  Racks() {
    for (int i = 1; i <= 5; ++i) {
      tubs.push_back(
          kiosk.house(i, "Kochiana brunnipes", {"A", i < 3 ? "1" : "2", std::to_string(i)}));
      kiosk.happened(tubs.back(), i == 5 ? 0.1 : 40,
                     Offered{Outcome::Took, "cricket", 1, Millimetres{10}});
      kiosk.happened(tubs.back(), 0.1, WaterFilled{});
    }
    kiosk.start();
  }
  [[nodiscard]] std::vector<RoundLine> all() const {
    return round_lines(kiosk.model(), 0, view_round(kiosk.model()).lines);
  }
};

}  // namespace

TEST_CASE("a page of the round is a part of its whole list") {
  const Racks racks;
  const auto all = racks.all();
  CHECK(all.size() == view_round(racks.kiosk.model()).lines);
  REQUIRE(all.size() > 7);
  for (std::size_t first = 0; first < all.size() + 2; ++first)
    for (std::size_t most = 0; most < 4; ++most) {
      const auto page = round_lines(racks.kiosk.model(), first, most);
      const std::size_t begin = std::min(first, all.size());
      const std::size_t end = std::min(begin + most, all.size());
      CHECK(page == std::vector(all.begin() + static_cast<std::ptrdiff_t>(begin),
                                all.begin() + static_cast<std::ptrdiff_t>(end)));
    }
}

TEST_CASE("every shelf has a head over its tubs, and those that wait stand at the end") {
  const auto all = Racks{}.all();
  CHECK(all[0].kind == RoundLine::Kind::Shelf);
  CHECK(all[0].detail == "2 due");
  CHECK(all[1].position == "1");
  CHECK(all[3].kind == RoundLine::Kind::Shelf);
  CHECK(all.back().quiet);
  CHECK(all.back().position == "A2-5");
}

TEST_CASE("what is done is struck through, and what is next comes behind it") {
  Racks racks;
  racks.kiosk.does(SetOut{});
  CHECK(view_round(racks.kiosk.model()).next == 1);
  racks.kiosk.scans(racks.tubs[0]);
  racks.kiosk.scans_card(Action::Took);
  const auto all = racks.all();
  CHECK(all[1].done);
  CHECK_FALSE(all[2].done);
  CHECK(view_round(racks.kiosk.model()).next == 2);
}
