// What there is in the place of what was planned: said once before setting out, recorded at every
// tub of the round, forgotten after it.

#include "kiosk/view/round_view.hpp"
#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using kiosk::AskPrey;
using kiosk::ScreenName;

namespace {

// Two tubs that take crickets of 10 mm and are due.
struct Short {
  TableKiosk kiosk;
  std::vector<Code> tubs;

  Short() {
    for (int i = 1; i <= 2; ++i) {
      tubs.push_back(kiosk.house(i, "Kochiana brunnipes", {"A", "1", std::to_string(i)}));
      kiosk.happened(tubs.back(), 30, Offered{Outcome::Took, "cricket", 1, Millimetres{10}});
      kiosk.happened(tubs.back(), 1, WaterFilled{});
    }
    kiosk.start();
    kiosk.does(kiosk::Show{ScreenName::Carry});
  }
  void instead(const AskPrey& of, const std::string& answer) {
    kiosk.does(kiosk::Ask{of});
    kiosk.does(kiosk::AnswerWith{answer});
  }
  // What the next meal at `tub` would be recorded with, and is.
  Offered meal(const Code& tub) {
    kiosk.scans(tub);
    kiosk.scans_card(Action::Took);
    return std::get<Offered>(kiosk.log.read_animal(kiosk.animal_of(tub)).value().back().details);
  }
};

constexpr auto crickets = [] { return AskPrey{"cricket", Millimetres{10}}; };

}  // namespace

TEST_CASE("another prey is planned, carried and recorded in the place of one that is not here") {
  Short room;
  room.instead(crickets(), "Roach");
  CHECK(room.kiosk.model().screen == ScreenName::Carry);
  const auto carry = kiosk::view_carry(room.kiosk.model());
  REQUIRE(carry.prey.size() == 1);
  CHECK(carry.prey[0].words.starts_with("Bring 2 roaches of about 10 mm"));
  CHECK(carry.prey[0].instead == AskPrey{"roach", Millimetres{10}});
  room.kiosk.does(kiosk::SetOut{});
  const Offered meal = room.meal(room.tubs[0]);
  CHECK(meal.prey == "roach");
  CHECK(meal.size == Millimetres{10});
}

TEST_CASE("the size can be another one too, in the keeper's unit or in one that is named") {
  for (const auto& [answer, size] : {std::pair{"roach 12", 12.0},
                                     {"roach 12 mm", 12.0},
                                     {"roach 1.2 cm", 12.0},
                                     {" dubia roach  0.5 in ", 12.7}}) {
    Short room;
    room.instead(crickets(), answer);
    const Offered meal = room.meal(room.tubs[0]);
    CHECK(meal.prey ==
          (std::string(answer).find("dubia") == std::string::npos ? "roach" : "dubia roach"));
    REQUIRE(meal.size);
    CHECK(std::abs(meal.size->value - size) < 1e-9);
  }
}

TEST_CASE("what stands in can be changed again, and back to what was planned") {
  Short room;
  room.instead(crickets(), "roach 12");
  room.instead({"roach", Millimetres{12}}, "locust");
  CHECK(kiosk::view_carry(room.kiosk.model()).prey[0].instead ==
        AskPrey{"locust", Millimetres{12}});
  room.instead({"locust", Millimetres{12}}, "cricket 10");
  CHECK(room.kiosk.model().rules.collection.instead.empty());
  CHECK(room.meal(room.tubs[0]).prey == "cricket");
}

TEST_CASE("what stands in at the planned size can be replaced in its turn") {
  Short room;
  room.instead(crickets(), "roach");
  room.instead({"roach", Millimetres{10}}, "locust");
  CHECK(room.kiosk.model().rules.collection.instead ==
        std::vector{PreyInstead{"cricket", Millimetres{10}, "locust", std::nullopt}});
  CHECK(room.meal(room.tubs[0]).prey == "locust");
}

TEST_CASE("the round's end and the next day bring back what is usual") {
  Short room;
  room.instead(crickets(), "roach");
  room.kiosk.does(kiosk::SetOut{});
  room.kiosk.does(kiosk::EndRound{});
  CHECK(room.kiosk.model().rules.collection.instead.empty());

  Short other;
  other.instead(crickets(), "roach");
  other.kiosk.clock.advance(std::chrono::hours{24});
  other.kiosk.does(kiosk::Show{ScreenName::Round});
  CHECK(other.kiosk.model().rules.collection.instead.empty());
}

TEST_CASE("a fresh reading of the log does not forget what there is today") {
  Short room;
  room.instead(crickets(), "roach");
  Overview overview{.collection = room.kiosk.model().collection,
                    .forecasts = room.kiosk.model().forecasts};
  room.kiosk.does(kiosk::OverviewReady{overview, {}});
  CHECK(room.meal(room.tubs[1]).prey == "roach");
}

TEST_CASE("an answer that is no prey changes nothing and says so") {
  for (const char* answer : {"", "  ", "roach 900", "roach 0"}) {
    Short room;
    room.instead(crickets(), answer);
    CHECK(room.kiosk.model().screen == ScreenName::Words);
    CHECK(room.kiosk.notice().find("Nothing was changed") != std::string::npos);
    CHECK(room.kiosk.model().rules.collection.instead.empty());
  }
}

TEST_CASE("prey whose size nobody knows is asked for and replaced as such") {
  Short room;
  kiosk::Model model = room.kiosk.model();
  for (TubTask& tub : model.plan.due) tub.instruction.prey->size.reset();
  const auto carry = kiosk::view_carry(model);
  REQUIRE(carry.prey.size() == 1);
  CHECK(carry.prey[0].instead == AskPrey{"cricket", std::nullopt});
  room.instead(carry.prey[0].instead, "roach");
  CHECK(room.kiosk.model().rules.collection.instead ==
        std::vector{PreyInstead{"cricket", std::nullopt, "roach", std::nullopt}});
}
