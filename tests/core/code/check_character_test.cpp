#include "core/code/check_character.hpp"

#include "tests/frame.hpp"

using namespace rackside;

TEST_CASE("check characters agree with published ones") {
  // ISO/IEC 7064 MOD 37,36 in use: A12425GABC1234002 -> M is the example of ISO 7064 as quoted by
  // the Global Release Identifier standard; the other two are worked examples of general-purpose
  // check-digit libraries.
  CHECK(check_character("A12425GABC1234002") == 'M');
  CHECK(check_character("123AB") == 'X');
  CHECK(check_character("DADPIDA3897722461") == 'J');
  CHECK(check_character_holds("A12425GABC1234002M"));
  CHECK_FALSE(check_character_holds("A12425GABC1234002N"));
}

TEST_CASE("what is outside the alphabet has no check character") {
  CHECK_FALSE(check_character(""));
  CHECK_FALSE(check_character("ab"));
  CHECK_FALSE(check_character("A B"));
  CHECK_FALSE(check_character_holds("A"));
}
