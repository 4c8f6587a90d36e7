#include <algorithm>

#include "kiosk/model/steps.hpp"
#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using kiosk::AskNewTub;
using kiosk::NewTubField;
using kiosk::ScreenName;

namespace {

struct Desk {
  TableKiosk kiosk;
  Desk() {
    kiosk.start();
    kiosk.does(kiosk::Show{ScreenName::NewTubs});
  }
  void type(const std::string& text) {
    for (const char c : text) kiosk.does(kiosk::Typed{std::string(1, c)});
  }
  void fill(NewTubField field, const std::string& text) {
    kiosk.does(kiosk::Ask{AskNewTub{field}});
    type(text);
    kiosk.does(kiosk::Enter{});
  }
  [[nodiscard]] const BatchRequest& form() const { return kiosk.model().new_tubs; }
};

}  // namespace

TEST_CASE("the first tub of an empty collection is written, labelled and found by its code") {
  Desk desk;
  desk.fill(NewTubField::Species, "encyocratella olivacea");
  desk.fill(NewTubField::Rack, "a");
  desk.fill(NewTubField::Shelf, "2");
  desk.fill(NewTubField::Position, "7");
  desk.kiosk.does(kiosk::NextValue{NewTubField::Stage});
  desk.kiosk.does(kiosk::MakeTubs{});
  const auto& collection = desk.kiosk.model().collection;
  REQUIRE(collection.enclosures.size() == 1);
  const auto& [code, tub] = *collection.enclosures.begin();
  CHECK(tub.place == Place{"A", "2", "7"});
  const AnimalState& animal = collection.animals.begin()->second;
  CHECK(animal.species == "Encyocratella olivacea");
  CHECK(animal.stage == Stage::Juvenile);
  REQUIRE(desk.kiosk.labels_wanted.size() == 1);
  CHECK(desk.kiosk.labels_wanted.front().tubs == std::vector{code});
  CHECK(desk.kiosk.notice() == "1 label on 1 page: labels.pdf.");
  desk.kiosk.scans(code);
  CHECK(desk.kiosk.model().screen == ScreenName::Tub);
}

TEST_CASE("a sac of 180 goes into 180 tubs, shelf after shelf") {
  Desk desk;
  desk.fill(NewTubField::Species, "Orphnaecus philippinus");
  desk.fill(NewTubField::Count, "180");
  desk.fill(NewTubField::Rack, "B");
  desk.fill(NewTubField::Shelf, "1");
  desk.fill(NewTubField::Position, "1");
  desk.fill(NewTubField::PerShelf, "60");
  desk.kiosk.does(kiosk::MakeTubs{});
  const auto& collection = desk.kiosk.model().collection;
  CHECK(collection.enclosures.size() == 180);
  CHECK(std::ranges::count_if(collection.enclosures, [](const auto& entry) {
          return entry.second.place.shelf == "3";
        }) == 60);
  CHECK(desk.form().count == 0);  // a second tap does not make them again
  CHECK(desk.form().species == "Orphnaecus philippinus");
}

TEST_CASE("without a species nothing is written, and it says so") {
  Desk desk;
  desk.kiosk.does(kiosk::MakeTubs{});
  CHECK(desk.kiosk.model().collection.enclosures.empty());
  CHECK(desk.kiosk.notice() == "Say first which species it is.");
}

TEST_CASE("a number that is none is asked for again") {
  Desk desk;
  for (const char* wrong : {"0", "x", "12x", "99999", "-1"}) {
    desk.kiosk.does(kiosk::Ask{AskNewTub{NewTubField::Count}});
    while (!desk.kiosk.model().asking->text.empty()) desk.kiosk.does(kiosk::Erase{});
    desk.type(wrong);
    desk.kiosk.does(kiosk::Enter{});
    INFO(wrong);
    CHECK(desk.kiosk.model().screen == ScreenName::Words);
    CHECK(desk.kiosk.notice() == "This is to be a number from 1 to 5000.");
    CHECK(desk.form().count == 0);
  }
}

TEST_CASE("a count that went into the species is noticed") {
  Desk desk;
  desk.fill(NewTubField::Species, "180");
  CHECK(desk.kiosk.notice() == "A species is written in letters.");
  CHECK(desk.form().species.empty());
}

TEST_CASE("a scan in the middle of a word keeps the word") {
  Desk desk;
  const Code tub = desk.kiosk.house(3, "Kochiana brunnipes");
  desk.kiosk.start();
  desk.kiosk.does(kiosk::Show{ScreenName::NewTubs});
  desk.kiosk.does(kiosk::Ask{AskNewTub{NewTubField::Species}});
  desk.type("orphn");
  desk.kiosk.scans(tub);
  CHECK(desk.kiosk.model().screen == ScreenName::Tub);
  desk.kiosk.does(kiosk::Close{});
  CHECK(desk.kiosk.model().screen == ScreenName::Words);
  CHECK(desk.kiosk.model().asking->text == "Orphn");
}

TEST_CASE("what the collection already says is offered as an answer") {
  Desk desk;
  (void)desk.kiosk.house(3, "Kochiana brunnipes");
  (void)desk.kiosk.house(4, "Orphnaecus philippinus");
  desk.kiosk.start();
  desk.kiosk.does(kiosk::Ask{AskNewTub{NewTubField::Species}});
  CHECK(answers_known(desk.kiosk.model(), 3).size() == 2);
  desk.type("o");
  REQUIRE(answers_known(desk.kiosk.model(), 3) ==
          std::vector<std::string>{"Orphnaecus philippinus"});
  desk.kiosk.does(kiosk::AnswerWith{"Orphnaecus philippinus"});
  CHECK(desk.form().species == "Orphnaecus philippinus");
}

TEST_CASE("when labels could not be printed, the tubs are there and it says why") {
  Desk desk;
  desk.kiosk.label_outcome = failure(ErrorKind::NotNow, "The printer takes no jobs at present.");
  desk.fill(NewTubField::Species, "Orphnaecus philippinus");
  desk.kiosk.does(kiosk::MakeTubs{});
  CHECK(desk.kiosk.model().collection.enclosures.size() == 1);
  CHECK(desk.kiosk.notice() == "The printer takes no jobs at present.");
}
