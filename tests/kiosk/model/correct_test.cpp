#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using kiosk::ScreenName;

namespace {

struct Open {
  TableKiosk kiosk;
  Code tub;
  Open() : tub(kiosk.house(1, "Kochiana brunnipes")) {
    kiosk.happened(tub, 3, Offered{Outcome::Took, "cricket", 2, Millimetres{8}});
    kiosk.start();
    kiosk.scans(tub);
  }
  [[nodiscard]] const std::vector<Event>& history() const { return *kiosk.model().tub->history; }
  void look_at(const Event& event) { kiosk.does(kiosk::LookAt{event.id}); }
  [[nodiscard]] std::vector<Event> told() const {
    auto events = standing(history());
    std::erase_if(events,
                  [](const Event& e) { return std::holds_alternative<AnimalAdded>(e.details); });
    return events;
  }
};

}  // namespace

TEST_CASE("a meal that was recorded wrongly becomes what it was, at its own time") {
  Open open;
  const Event meal = open.history().back();
  open.look_at(meal);
  CHECK(open.kiosk.model().screen == ScreenName::Correct);
  open.kiosk.does(kiosk::CorrectTo{Action::Refused});
  REQUIRE(open.told().size() == 1);
  const Event& now = open.told().front();
  CHECK(now.details == Details{Offered{Outcome::Refused, "cricket", 2, Millimetres{8}}});
  CHECK(now.when == meal.when);
  CHECK(shown_animal(open.kiosk.model())->refusals_since_meal == 1);
  CHECK(open.history().size() == 4);  // arrival, meal, its retraction, the correction
}

TEST_CASE("a record moves a day earlier, and a day later unless that is yet to come") {
  Open open;
  const Event meal = open.history().back();
  open.look_at(meal);
  open.kiosk.does(kiosk::CorrectDay{-1});
  CHECK(open.told().front().when.moment.utc == meal.when.moment.utc - std::chrono::days{1});
  for (int i = 0; i < 4; ++i) open.kiosk.does(kiosk::CorrectDay{1});
  CHECK(open.told().front().when.moment.utc == meal.when.moment.utc + std::chrono::days{3});
  open.kiosk.does(kiosk::CorrectDay{1});
  CHECK(open.kiosk.notice() == "That day has not come yet. Nothing was changed.");
  CHECK(open.told().size() == 1);
}

TEST_CASE("what was taken back is not corrected as well") {
  Open open;
  const Event meal = open.history().back();
  open.look_at(meal);
  open.kiosk.does(kiosk::TakeBack{meal.id});
  CHECK(open.told().empty());
  open.kiosk.does(kiosk::LookAt{meal.id});
  open.kiosk.does(kiosk::CorrectTo{Action::Refused});
  CHECK(open.told().empty());
  CHECK(open.kiosk.notice() == "This entry was taken back already.");
}

TEST_CASE("a correction to the same is none") {
  Open open;
  open.kiosk.does(kiosk::Record{Action::Misted});
  open.look_at(open.history().back());
  const auto before = open.history().size();
  open.kiosk.does(kiosk::CorrectTo{Action::Misted});
  CHECK(open.history().size() == before);
}

TEST_CASE("a correction can be undone, and everything stays readable") {
  Open open;
  open.look_at(open.history().back());
  open.kiosk.does(kiosk::CorrectTo{Action::LeftOvernight});
  open.kiosk.does(kiosk::Record{Action::Undo});
  CHECK(open.told().empty());
  CHECK(open.history().size() == 5);
}
