#include "core/words/sentences.hpp"

#include "tests/frame.hpp"

using namespace rackside;

TEST_CASE("counted things have their plural") {
  CHECK(count_of(1, "cricket") == "1 cricket");
  CHECK(count_of(2, "cricket") == "2 crickets");
  CHECK(plural("roach") == "roaches");
  CHECK(plural("fruit fly") == "fruit flies");
  CHECK(plural("day") == "days");
  CHECK(plural("locusts") == "locusts");
  CHECK(plural("") == "");
}

TEST_CASE("nothing is told to be certain") {
  CHECK(in_ten(0.8) == "8 of 10");
  CHECK(in_ten(1) == "more than 9 of 10");
  CHECK(in_ten(0) == "less than 1 of 10");
}

TEST_CASE("a half-sentence becomes a line") {
  CHECK(as_line("refused 3 meals") == "Refused 3 meals.");
  CHECK(as_line("Is it well?") == "Is it well?");
  CHECK(as_line("").empty());
}
