#include "core/interchange/import.hpp"

#include "tests/core/interchange/files.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

const std::string two_animals =
    "animal,species,sex,stage,instar,acquired,rack,shelf,position,note\r\n"
    "op-1,Orphnaecus philippinus,female,juvenile,6,2034-02-01,A,2,14,\"shy, digs\"\r\n"
    "ec-9,Encyocratella olivacea,,sling,,,A,3,1,\r\n";

std::string event_row(const std::string& cells) {
  return "when,animal,event,outcome,prey,count,size_mm,sign,value,unit,by,note\n" + cells + "\n";
}

Details imported(const std::string& cells) {
  Keeper keeper;
  keeper.import(two_animals, event_row(cells));
  return keeper.last("op-1");
}

std::string refused(const std::string& cells) {
  Keeper keeper;
  const auto said = keeper.refusal(two_animals, event_row(cells));
  CHECK(keeper.events().empty());
  return said;
}

bool begins(const std::string& text, const std::string& beginning) {
  UNSCOPED_INFO(text);
  return text.rfind(beginning, 0) == 0;
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

TEST_CASE("a cell that contradicts an animal of the log is refused, a cell left empty is not") {
  Keeper keeper;
  keeper.import(two_animals, std::nullopt);
  CHECK(begins(keeper.refusal("animal,species\nop-1,Orphnaecus\n", std::nullopt),
               "animals.csv, line 2, column species: The animal \"op-1\" is in the log already"));
  CHECK(keeper.import("animal,species,note\nop-1,,\n", std::nullopt).animals_known == 1);
}

TEST_CASE("a bad row is refused with file, line, column and reason, and nothing is taken over") {
  CHECK(begins(refused("2034-03-01,op-1,offered,nibbled,,,,,,,,"),
               "events.csv, line 2, column outcome: \"nibbled\" is none of took, refused"));
  CHECK(begins(refused("2034-03-01,op-1,misted,,,,,,,,,\n2034-02-30,op-1,misted,,,,,,,,,"),
               "events.csv, line 3, column when: \"2034-02-30\" is not a date"));
  for (const auto& [cells, where] : std::vector<std::pair<std::string, std::string>>{
           {",op-1,misted,,,,,,,,,", "when: The date is missing."},
           {"2034-03-01T10:00,op-1,misted,,,,,,,,,", "when: "},
           {"2035-06-03,op-1,misted,,,,,,,,,", "when: \"2035-06-03\" has not come yet"},
           {"0034-03-01,op-1,misted,,,,,,,,,", "when: \"0034-03-01\" is before 1900"},
           {"2034-03-01,nobody,misted,,,,,,,,,", "animal: There is no animal \"nobody\""},
           {"2034-03-01,,misted,,,,,,,,,", "animal: Which animal?"},
           {"2034-03-01,op-1,levitated,,,,,,,,,", "event: \"levitated\" is none of offered"},
           {"2034-03-01,op-1,,,,,,,,,,", "event: This cell must be filled in"},
           {"2034-03-01,op-1,misted,took,,,,,,,,", "outcome: The event \"misted\" has no use"},
           {"2034-03-01,op-1,offered,,,,,,,,,", "outcome: This cell must be filled in"},
           {"2034-03-01,op-1,offered,took,,0,,,,,,", "count: \"0\" is not a whole number"},
           {"2034-03-01,op-1,offered,took,,2.5,,,,,,", "count: \"2.5\" is not a whole number"},
           {"2034-03-01,op-1,offered,took,,,-3,,,,,", "size_mm: A size is more than 0"},
           {"2034-03-01,op-1,offered,took,,,big,,,,,", "size_mm: \"big\" is not a number"},
           {"2034-03-01,op-1,looked,,,,,dark mood,,,,", "sign: \"dark mood\" is not a sign"},
           {"2034-03-01,op-1,rehoused,,,,,,the big one,,,",
            "value: \"the big one\" is not the code"},
           {"2034-03-01,op-1,rehoused,,,,,,,,,", "value: \"\" is not the code of a tub"},
           {"2034-03-01,op-1,measured,,,,,,5,furlong,,carapace", "unit: \"furlong\" is none of"},
           {"2034-03-01,op-1,measured,,,,,,,mm,,carapace", "value: The number that was read"},
           {"2034-03-01,op-1,measured,,,,,,5,mm,,", "note: The note must say what was measured"},
           {"2034-03-01,op-1,measured,,,,,,5,mm,,leg span or carapace",
            "note: The note names both"},
           {"2034-03-01,op-1,sexed,,,,,,both,,,", "value: \"both\" is none of female"},
           {"2034-03-01,op-1,temperature,,,,,,24,K,,", "unit: \"K\" is none of C, F"},
           {"2034-03-01,op-1,temperature,,,,,,240,C,,", "value: No room is that cold or warm"},
           {"2034-03-01,op-1,humidity,,,,,,140,%,,", "value: Relative humidity is from 0"},
           {"2034-03-01,op-1,paired,,,,,,op-1,,,", "value: An animal cannot be paired"},
           {"2034-03-01,op-1,counted,,,,,,,,,", "count: How many were counted is missing"},
           {"2034-03-01,op-1,misted", ": This row has 3 cells and the header has 12."}}) {
    INFO(cells);
    const auto said = refused(cells);
    INFO(said);
    CHECK(said.find(where) != std::string::npos);
    CHECK(begins(said, "events.csv, line 2"));
    CHECK(said.find("Nothing was taken over.") != std::string::npos);
  }
}

TEST_CASE("a bad row of animals is refused in the same way") {
  const std::string person{make_code(CodeKind::Person, "000000").value().text()};
  std::string tub{tub_number(1).text()};
  const std::string good = tub;
  std::swap(tub[6], tub[7]);
  for (const auto& [text, said] : std::vector<std::pair<std::string, std::string>>{
           {"animal,sex\na,femlae\n", "line 2, column sex: \"femlae\" is none of"},
           {"animal,stage\na,teenager\n", "line 2, column stage: \"teenager\" is none of"},
           {"animal,instar\na,L5\n", "line 2, column instar: \"L5\" is not a whole number"},
           {"animal,count\na,0\n", "line 2, column count: \"0\" is not a whole number"},
           {"animal,born\na,01.02.2034\n", "line 2, column born: \"01.02.2034\" is not a date"},
           {"animal,born\na,2036-01-01\n", "line 2, column born: \"2036-01-01\" has not come"},
           {"animal,species\n,Neoholothele incei\n",
            "line 2, column animal: Every animal needs a key"},
           {"animal\na\nb\na\n", "line 4, column animal: \"a\" stands there twice"},
           {"animal,enclosure\na,tub 7\n",
            "column enclosure: \"tub 7\" is not the code of a tub. Leave"},
           {"animal,enclosure\na," + person + "\n", "is not the code of a tub"},
           {"animal,enclosure\na," + tub + "\n", "is not the code of a tub"},
           {"animal,enclosure,rack\na," + good + ",A\nb," + good + ",B\n",
            "line 3, column rack: The tub"},
           {"animal,colour\na,blue\n", "line 1, column colour: \"colour\" is not a column"},
           {"animal,animal\na,a\n",
            "line 1, column animal: The column \"animal\" stands there twice"},
           {"species\nx\n", "line 1: The column \"animal\" is missing."},
           {"animal;species\na;x\n", "line 1: The columns are separated by semicolons"},
           {"", "line 1: The file is empty"}}) {
    Keeper keeper;
    const auto refusal = keeper.refusal(text, std::nullopt);
    INFO(text << " -> " << refusal);
    CHECK(refusal.find(said) != std::string::npos);
    CHECK(begins(refusal, "animals.csv, "));
    CHECK(keeper.events().empty());
  }
}

TEST_CASE("a bad row of events keeps the animals out, too") {
  Keeper keeper;
  REQUIRE_FALSE(keeper.plan(two_animals, event_row("2034-03-01,op-1,levitated,,,,,,,,,")));
  CHECK(keeper.import(two_animals, std::nullopt).animals == 2);
}

TEST_CASE("noon of today may lie ahead, and tomorrow may have begun elsewhere") {
  Keeper keeper;  // it is one o'clock in the night
  keeper.import(two_animals, event_row("2035-06-01,op-1,misted,,,,,,,,,\n"
                                       "2035-06-02,op-1,misted,,,,,,,,,"));
  CHECK(begins(keeper.refusal(std::nullopt, event_row("2035-06-03,op-1,misted,,,,,,,,,")),
               "events.csv, line 2, column when: \"2035-06-03\" has not come yet"));
}
