#include "kiosk/view/setup_view.hpp"

#include <algorithm>
#include <set>

#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

SetupRow row_named(const Model& model, const std::string& title) {
  for (const SetupRow& row : view_setup(model, 5.9))
    if (row.title == title) return row;
  FAIL("there is no row " << title);
  return {};
}

void choose(TableKiosk& kiosk, const std::string& title, const std::string& word) {
  for (const SetupChoice& choice : row_named(kiosk.model(), title).choices)
    if (choice.word == word) return kiosk.does(choice.intent);
  FAIL("there is no " << word << " in " << title);
}

}  // namespace

TEST_CASE("every choice of setup changes what it says and nothing else") {
  TableKiosk kiosk;
  kiosk.start();
  kiosk.does(Show{ScreenName::Setup});
  choose(kiosk, "colours", "night");
  choose(kiosk, "lengths", "in");
  choose(kiosk, "warmth", "°F");
  choose(kiosk, "goes dark", "30");
  choose(kiosk, "motion", "off");
  choose(kiosk, "label sheet", "203 dpi");
  Settings expected;
  expected.palette = PaletteName::Night;
  expected.wording.units = {LengthUnit::Inch, TemperatureUnit::Fahrenheit};
  expected.blank_after = std::chrono::minutes{30};
  expected.motion = Motion::Off;
  expected.printer_dpi = 203;
  CHECK(kiosk.model().settings == expected);
}

TEST_CASE("what is chosen is marked, once a row") {
  TableKiosk kiosk;
  kiosk.start();
  choose(kiosk, "colours", "dusk");
  const SetupRow row = row_named(kiosk.model(), "colours");
  CHECK(std::ranges::count_if(row.choices, &SetupChoice::chosen) == 1);
  CHECK(row.choices[1].chosen);
}

TEST_CASE("dates go through all ways of writing them and come round") {
  TableKiosk kiosk;
  kiosk.start();
  std::set<std::string> seen;
  for (std::size_t i = 0; i < all_date_styles.size(); ++i) {
    seen.insert(row_named(kiosk.model(), "dates").detail);
    choose(kiosk, "dates", "another way");
  }
  CHECK(seen.size() == all_date_styles.size());
  CHECK(kiosk.model().settings.wording.dates == DateStyle::DayMonth);
}

TEST_CASE("printers are offered in turn once the printing system has named them") {
  TableKiosk kiosk;
  kiosk.start();
  CHECK(row_named(kiosk.model(), "labels go to").choices.size() == 1);
  kiosk.does(Show{ScreenName::Setup});
  choose(kiosk, "labels go to", "a printer");
  CHECK(kiosk.model().settings.printer == "rack-room-labels");
  choose(kiosk, "labels go to", "another printer");
  CHECK(kiosk.model().settings.printer == "office");
  choose(kiosk, "labels go to", "files");
  CHECK(kiosk.model().settings.printer.empty());
}

TEST_CASE("a size that was made larger and smaller again is where it was") {
  TableKiosk kiosk;
  kiosk.start();
  choose(kiosk, "size", "larger");
  const double larger = *kiosk.model().settings.pixels_per_mm;
  CHECK(larger > 5.9);
  for (const SetupRow& row : view_setup(kiosk.model(), larger))
    if (row.title == "size") kiosk.does(row.choices.front().intent);
  CHECK(*kiosk.model().settings.pixels_per_mm == Approx(5.9));
}
