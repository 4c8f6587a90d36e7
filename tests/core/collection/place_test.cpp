#include "core/collection/place.hpp"

#include "tests/frame.hpp"

using namespace rackside;

TEST_CASE("numbers in places sort as numbers") {
  CHECK(natural_before("shelf 2", "shelf 10"));
  CHECK(natural_before("2", "10"));
  CHECK_FALSE(natural_before("10", "2"));
  CHECK(natural_before("a2", "B1"));
  CHECK_FALSE(natural_before("007", "7"));
  CHECK_FALSE(natural_before("7", "007"));
}

TEST_CASE("one walks rack by rack, shelf by shelf, and unknown places last") {
  CHECK(walks_before({"A", "1", "9"}, {"A", "2", "1"}));
  CHECK(walks_before({"A", "9", "9"}, {"B", "1", "1"}));
  CHECK(walks_before({"B", "1", "1"}, {"", "", ""}));
  CHECK_FALSE(walks_before({"", "", ""}, {"B", "1", "1"}));
}

TEST_CASE("the walking order is a strict weak order") {
  rc::prop("antisymmetric and transitive",
           [](const std::string& a, const std::string& b, const std::string& c) {
             RC_ASSERT(!natural_before(a, a));
             RC_ASSERT(!(natural_before(a, b) && natural_before(b, a)));
             if (natural_before(a, b) && natural_before(b, c)) RC_ASSERT(natural_before(a, c));
           });
}

TEST_CASE("a place is told as far as it is known") {
  CHECK(format_place({"A", "2", "14"}) == "rack A, shelf 2, position 14");
  CHECK(format_place({"A", "", "14"}) == "rack A, position 14");
  CHECK(format_place({}).empty());
}
