#include "core/interchange/take_over.hpp"

#include <fmt/format.h>

#include "tests/core/interchange/files.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

Details imported(const std::string& cells) {
  Keeper keeper;
  keeper.import(two_animals, event_row(cells));
  return keeper.last("op-1");
}

// One a minute, in March.
std::string mistings(int count) {
  std::string rows;
  for (int i = 0; i < count; ++i)
    rows += fmt::format("2034-03-{:02}T{:02}:{:02}+00:00,op-1,misted,,,,,,,,,\n", 1 + i / 1440,
                        i / 60 % 24, i % 60);
  return rows;
}

}  // namespace

TEST_CASE("animals come with their particulars and new tubs with new codes") {
  Keeper keeper;
  const auto plan = keeper.import(two_animals, std::nullopt);
  CHECK(plan.animals == 2);
  CHECK(plan.tubs == 2);
  const AnimalState animal = keeper.animal("op-1");
  CHECK(animal.species == "Orphnaecus philippinus");
  CHECK(animal.sex == Sex::Female);
  CHECK(animal.stage == Stage::Juvenile);
  CHECK(animal.instar == 6);
  CHECK(format_day(animal.added.moment.day()) == "2034-02-01");
  REQUIRE(animal.enclosure);
  CHECK(animal.enclosure != keeper.animal("ec-9").enclosure);
  CHECK(keeper.collection().enclosure(*animal.enclosure)->place == Place{"A", "2", "14"});
}

TEST_CASE("columns may stand in any order, and those that are not needed may be missing") {
  Keeper keeper;
  keeper.import("species,animal\nOmothymus violaceopes,ov-1\n",
                "event,when,animal\nmisted,2034-05-01,ov-1\n");
  CHECK(keeper.animal("ov-1").species == "Omothymus violaceopes");
  CHECK(keeper.animal("ov-1").last_misted);
}

TEST_CASE("a tub may be named by the code on its label, with or without the blank") {
  const std::string code{tub_number(3).text()};
  for (const std::string& written : {code, tub_number(3).grouped()}) {
    Keeper keeper;
    keeper.import("animal,enclosure,rack\na," + written + ",B\nb," + code + ",\n", std::nullopt);
    CHECK(keeper.animal("a").enclosure == tub_number(3));
    CHECK(keeper.collection().enclosure(tub_number(3))->residents.size() == 2);
    CHECK(keeper.collection().enclosure(tub_number(3))->place.rack == "B");
  }
}

TEST_CASE("every event of the table is taken over") {
  CHECK(imported("2034-03-01T20:00+01:00,op-1,offered,took,cricket,2,8.5,,,,,") ==
        Details{Offered{Outcome::Took, "cricket", 2, Millimetres{8.5}}});
  CHECK(imported("2034-03-01,op-1,offered,left overnight,,,,,,,,") ==
        Details{Offered{Outcome::LeftOvernight}});
  CHECK(imported("2034-03-01,op-1,looked,,,,,dark abdomen; Sealed in,,,,") ==
        Details{Looked{{Sign::DarkAbdomen, Sign::SealedIn}}});
  CHECK(imported("2034-03-01,op-1,looked,,,,,,,,,") == Details{Looked{}});
  CHECK(imported("2034-03-01,op-1,moult,,,,,,,,,") == Details{Moulted{}});
  CHECK(imported("2034-03-01,op-1,shed found,,,,,,,,,") == Details{ShedFound{}});
  CHECK(imported("2034-03-01,op-1,prey removed,,,,,,,,,") == Details{PreyRemoved{}});
  CHECK(imported("2034-03-01,op-1,shed removed,,,,,,,,,") == Details{ShedRemoved{}});
  CHECK(imported("2034-03-01,op-1,misted,,,,,,,,,") == Details{Misted{}});
  CHECK(imported("2034-03-01,op-1,water filled,,,,,,,,,") == Details{WaterFilled{}});
  CHECK(imported("2034-03-01,op-1,note,,,,,,,,,hides") == Details{Noted{}});
  CHECK(imported("2034-03-01,op-1,sexed,,,,,,mature male,,,hooks") ==
        Details{Sexed{Sex::Male, Stage::MatureMale}});
  CHECK(imported("2034-03-01,op-1,egg sac,,,,,,,,,") == Details{EggSac{}});
  CHECK(imported("2034-03-01,op-1,pulled,,,,,,,,,") == Details{Pulled{}});
  CHECK(imported("2034-03-01,op-1,counted,,,57,,,,,,") == Details{Counted{57}});
  CHECK(imported("2034-03-01,op-1,died,,,,,,,,,") == Details{Died{}});
  CHECK(imported("2034-03-01,op-1,left,sold,,,,,,,,") == Details{Left{}});
  CHECK(imported("2034-03-01,op-1,humidity,,,,,,72.5,%,,") ==
        Details{HumidityRead{Percent{72.5}, ""}});
  Keeper keeper;
  keeper.import(two_animals, event_row("2034-03-01,op-1,paired,,,,,,ec-9,,,"));
  CHECK(keeper.last("op-1") == Details{Paired{keeper.animal("ec-9").id}});
}

TEST_CASE("units are turned into metric") {
  // 1 inch is 25.4 mm (ISO 1959 yard and pound agreement); 77 F is 25 C.
  const auto length = [](const std::string& value_unit_note) {
    return std::get<Measured>(imported("2034-03-01,op-1,measured,,,,,," + value_unit_note));
  };
  CHECK(length("2,in,,leg span").length.value == Approx(50.8));
  CHECK(length("1.5,cm,,carapace").length.value == Approx(15));
  CHECK(length("15,mm,,carapace; from the shed").what == Measure::Carapace);
  CHECK(std::get<TemperatureRead>(imported("2034-03-01,op-1,temperature,,,,,,77,F,,"))
            .temperature.value == Approx(25));
}

TEST_CASE("the note of a measure keeps what is not the measure's name") {
  Keeper keeper;
  keeper.import(two_animals, event_row("2034-03-01,op-1,measured,,,,,,15,mm,Ines,carapace; shed"));
  const auto event = keeper.log.read_animal(keeper.animal("op-1").id).value().back();
  CHECK(event.note == "shed");
  CHECK(event.by == "Ines");
}

TEST_CASE("a reading without an animal is the room's, and its note the rack") {
  Keeper keeper;
  keeper.import(std::nullopt, event_row("2034-03-01T08:00Z,,temperature,,,,,,24,C,,B"));
  const auto events = keeper.events();
  REQUIRE(events.size() == 1);
  CHECK(events[0].details == Details{TemperatureRead{Celsius{24}, "B"}});
  CHECK(events[0].note.empty());
}

TEST_CASE("rehousing moves the animal, and its records name the tub it was in") {
  Keeper keeper;
  const std::string tub{tub_number(4).text()};
  keeper.import(two_animals, event_row("2034-03-01T08:00Z,op-1,misted,,,,,,,,,\n"
                                       "2034-03-02T08:00Z,op-1,rehoused,,,,,," +
                                       tub +
                                       ",,,\n"
                                       "2034-03-03T08:00Z,op-1,misted,,,,,,,,,"));
  CHECK(keeper.animal("op-1").enclosure == tub_number(4));
  const auto events = keeper.log.read_animal(keeper.animal("op-1").id).value();
  REQUIRE(events.size() == 4);
  CHECK(events[1].enclosure == events[0].enclosure);
  CHECK(events[3].enclosure == tub_number(4));
}

TEST_CASE("rows of one day stay in the order of the file") {
  Keeper keeper;
  keeper.import(two_animals, event_row("2034-03-01,op-1,offered,refused,,,,,,,,\n"
                                       "2034-03-01,op-1,offered,took,,,,,,,,"));
  CHECK(keeper.animal("op-1").last_offer->outcome == Outcome::Took);
}

TEST_CASE("an animal came when it was acquired, else born, else with its first record") {
  Keeper keeper;
  keeper.import(
      "animal,born,acquired\na,2033-01-01,2034-01-01\nb,2033-01-01,\nc,,\nd,,\n",
      event_row("2034-02-02,c,misted,,,,,,,,,\n2034-01-31T09:00Z,c,offered,took,,,,,,,,"));
  const auto day = [&](const char* key) {
    return format_day(keeper.animal(key).added.moment.day());
  };
  CHECK(day("a") == "2034-01-01");
  CHECK(day("b") == "2033-01-01");
  CHECK(day("c") == "2034-01-31");
  CHECK(day("d") == "2035-06-01");
  CHECK(keeper.animal("c").last_meal);  // it was there for its first record
}

TEST_CASE("importing the same files again changes nothing") {
  Keeper keeper;
  const auto events = event_row(
      "2034-03-01,op-1,offered,took,cricket,,,,,,,\n"
      "2034-03-01,op-1,offered,took,cricket,,,,,,,\n"
      "2034-03-01T08:00Z,,temperature,,,,,,24,C,,B");
  const auto first = keeper.import(two_animals, events);
  CHECK(first.events == 3);  // two equal rows are two crickets
  const auto again = keeper.import(two_animals, events);
  CHECK(again.drafts.empty());
  CHECK(again.animals_known == 2);
  CHECK(again.events_known == 3);
  const auto longer = keeper.import(std::nullopt, events + "2034-03-02,op-1,misted,,,,,,,,,\n");
  CHECK(longer.events == 1);
  CHECK(longer.events_known == 3);
}

TEST_CASE("a row that stands there once more than in the log is one new event") {
  Keeper keeper;
  const std::string row = "2034-03-01,op-1,offered,took,cricket,,,,,,,\n";
  keeper.import(two_animals, event_row(row));
  const auto again = keeper.import(std::nullopt, event_row(row + row));
  CHECK(again.events_known == 1);
  CHECK(again.events == 1);
}

TEST_CASE("what was taken back in the log does not come back with the file") {
  Keeper keeper;
  const auto events = event_row("2034-03-01,op-1,misted,,,,,,,,,");
  const auto first = keeper.import(two_animals, events);
  Draft retraction;
  retraction.id = keeper.ids.next_event();
  retraction.when.moment = keeper.clock.now();
  retraction.details = Retracted{first.drafts.back().id};
  REQUIRE(keeper.log.append({retraction}, {}));
  CHECK(keeper.import(two_animals, events).events == 0);
}

TEST_CASE("an import that was stopped goes on when the same files are imported again") {
  const std::string rows = mistings(5'000);
  Keeper whole;
  whole.import(two_animals, event_row(rows));

  Keeper keeper;
  const auto plan = keeper.plan(two_animals, event_row(rows)).value();
  const auto written = take_over_part(plan, 0, keeper.log, keeper.clock).value();
  CHECK(written == import_part);
  CHECK(keeper.events().size() == import_part);
  const auto again = keeper.plan(two_animals, event_row(rows)).value();
  CHECK(again.drafts.size() == plan.drafts.size() - written);
  std::size_t parts = 0;
  REQUIRE(take_over(again, keeper.log, keeper.clock, [&](std::size_t) { ++parts; }));
  CHECK(parts == 2);
  CHECK(keeper.export_files().events == whole.export_files().events);
}

TEST_CASE("a disk that is full half-way leaves the first parts, and it is said how many") {
  Keeper keeper;
  const Error full{ErrorKind::Full, "The disk is full. This was not saved.", {}};
  const auto plan = keeper.plan(two_animals, event_row(mistings(5'000))).value();
  const auto fill = [&](std::size_t written) {
    if (written == 2 * import_part) keeper.log.fail_next_write(full);
  };
  const auto outcome = take_over(plan, keeper.log, keeper.clock, fill);
  REQUIRE_FALSE(outcome);
  CHECK(outcome.error().kind == ErrorKind::Full);
  CHECK(outcome.error().sentence ==
        "4000 of 5004 entries are in the log; the same brought in again goes on there. The rest: "
        "The disk is full. This was not saved.");
  CHECK(keeper.events().size() == 2 * import_part);
}

TEST_CASE("a disk that is full from the start keeps its own sentence") {
  Keeper keeper;
  const Error full{ErrorKind::Full, "The disk is full. This was not saved.", {}};
  const auto plan = keeper.plan(two_animals, std::nullopt).value();
  keeper.log.fail_next_write(full);
  const auto outcome = take_over(plan, keeper.log, keeper.clock, [](std::size_t) {});
  REQUIRE_FALSE(outcome);
  CHECK(outcome.error() == full);
}

TEST_CASE("which file it is, is told by its columns") {
  CHECK(kind_of_file(two_animals) == FileKind::Animals);
  CHECK(kind_of_file(event_row("")) == FileKind::Events);
  CHECK(kind_of_file("\xEF\xBB\xBFwhen, event ,animal\n") == FileKind::Events);
  CHECK(kind_of_file("") == FileKind::Animals);
  CHECK(kind_of_file("\xFF\xFE") == FileKind::Animals);
}
