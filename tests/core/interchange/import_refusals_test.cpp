// What is not taken over, and what the keeper is told about it.

#include "tests/core/interchange/files.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

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
