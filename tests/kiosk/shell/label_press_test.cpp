// The sheets about a cover, printed as the kiosk is set up.

#include "kiosk/shell/label_press.hpp"

#include "core/cover/days.hpp"
#include "core/words/dates.hpp"
#include "tests/core/cover/away_room.hpp"
#include "tests/fakes/fake_printer.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"
#include "tests/labels/render/paper.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

struct Machine {
  TemporaryFolder folder;
  FakePrinter* printer = new FakePrinter;
  LabelPress press{folder / "log.db", std::unique_ptr<Printer>(printer)};
  Settings settings;

  [[nodiscard]] CoverReading reading() const {
    AwayRoom room;
    room.tub(1, {"A", "1", "1"}, {.species = "Orphnaecus philippinus", .stage = Stage::Juvenile});
    room.happened(9, 1, Offered{.prey = "cricket", .size = Millimetres{8}});
    room.rules.collection.wording = settings.wording;
    CoverReading reading;
    reading.plan = room.planned(AwayRoom::cover(0, 3));
    reading.overview.collection = room.collection();
    return reading;
  }
  [[nodiscard]] std::vector<std::filesystem::path> files() const {
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(folder.path()))
      files.push_back(entry.path());
    std::ranges::sort(files);
    return files;
  }
};

std::string all_text(const std::string& pdf) {
  std::string all;
  for (int page = 0; page < paper_size(pdf).pages; ++page) all += text_on_paper(pdf, page);
  return all;
}

}  // namespace

TEST_CASE("without a printer the sheet becomes a file beside the log, a new one each time") {
  Machine machine;
  const auto said =
      machine.press.print_handover(machine.reading(), machine.settings, AwayRoom::now());
  REQUIRE(said);
  CHECK_THAT(*said, Catch::Matchers::StartsWith("The sheet for Noor, "));
  REQUIRE(machine.press.print_handover(machine.reading(), machine.settings, AwayRoom::now()));
  REQUIRE(machine.files().size() == 2);
  const std::string pdf = read_file(machine.files().front());
  CHECK(std::round(paper_size(pdf).width) == 210);
  CHECK_THAT(all_text(pdf), Catch::Matchers::Contains("Noor stands in") &&
                                Catch::Matchers::Contains("Orphnaecus philippinus"));
}

TEST_CASE("a printer with whole pages gets the sheet; one with a roll does not") {
  Machine machine;
  machine.settings.printer = "office";
  machine.settings.label_sheet = "a5-3x9";
  REQUIRE(machine.press.print_handover(machine.reading(), machine.settings, AwayRoom::now()));
  REQUIRE(machine.printer->tasks.size() == 1);
  CHECK(machine.files().empty());
  machine.settings.label_sheet = "roll-29";
  REQUIRE(machine.press.print_handover(machine.reading(), machine.settings, AwayRoom::now()));
  CHECK(machine.printer->tasks.size() == 1);
  CHECK(machine.files().size() == 1);
}

TEST_CASE("a printer that refuses is told as it says it") {
  Machine machine;
  machine.settings.printer = "office";
  machine.printer->next_failure = Error{ErrorKind::Broken, "It is out of paper.", {}};
  const auto said =
      machine.press.print_handover(machine.reading(), machine.settings, AwayRoom::now());
  REQUIRE_FALSE(said);
  CHECK(said.error().sentence == "It is out of paper.");
}

TEST_CASE("the sheet and the report have their dates and sizes as the kiosk is set up") {
  for (const DateStyle dates : all_date_styles) {
    Machine machine;
    machine.settings.wording = {dates, {LengthUnit::Inch, TemperatureUnit::Fahrenheit}};
    REQUIRE(machine.press.print_handover(machine.reading(), machine.settings, AwayRoom::now()));
    const std::string text = all_text(read_file(machine.files().at(0)));
    for (int i = 0; i <= 3; ++i)
      CHECK_THAT(text, Catch::Matchers::Contains(long_day_words(AwayRoom::day(i), dates)));
    CHECK_THAT(text, Catch::Matchers::Contains("0.3 in"));
    CHECK_THAT(text, !Catch::Matchers::Contains(" mm"));

    TubReturn tub{.animal = animal_number(1), .enclosure = tub_number(1)};
    tub.duties = {{Task::Offer, AwayRoom::day(0), Fate::NotDone, AwayRoom::day(0)}};
    tub.eaten = {{"cricket", Millimetres{8}, 3}};
    ReturnReport report = report_return(AwayRoom::cover(0, 3), {tub},
                                        days_until(AwayRoom::now(), AwayRoom::day(3)), {});
    report.wording = machine.settings.wording;
    REQUIRE(machine.press.print_return(report, machine.settings, AwayRoom::now()));
    const std::string told = all_text(read_file(machine.files().at(1)));
    CHECK_THAT(told, Catch::Matchers::Contains(weekday_words(AwayRoom::day(0), dates)));
    CHECK_THAT(told, Catch::Matchers::Contains("0.3 in"));
  }
}
