#include "core/code/code_of_name.hpp"

#include <set>

#include "tests/frame.hpp"

using namespace rackside;

TEST_CASE("a name has one code, and other names have others") {
  std::set<Code> codes;
  for (int rack = 0; rack < 30; ++rack)
    for (int shelf = 0; shelf < 60; ++shelf)
      codes.insert(code_of_shelf(std::to_string(rack), std::to_string(shelf)));
  CHECK(codes.size() == 30 * 60);
  CHECK(code_of_shelf("A", "1") == code_of_shelf("A", "1"));
  CHECK(code_of_shelf("A1", "") != code_of_shelf("A", "1"));
  CHECK(code_of_name(CodeKind::Person, "Ines").kind() == CodeKind::Person);
  CHECK(code_of_shelf("A", "1").kind() == CodeKind::Shelf);
}

TEST_CASE("printed shelf codes and badges keep their codes") {
  // Written down once; a change here makes printed cards worthless.
  CHECK(code_of_shelf("A", "1").text() == "RF95N3V9");
  CHECK(code_of_name(CodeKind::Person, "Ines").text() == "PAA9FCMT");
}
