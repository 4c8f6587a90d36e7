#include "kiosk/frames/test_pattern.hpp"

#include "tests/frame.hpp"

using namespace rackside;
using std::chrono::milliseconds;

TEST_CASE("the test pattern moves, and shows every grey from left to right") {
  TestPattern pattern(320, 8);
  const auto first = pattern.next(milliseconds{200}).value().value();
  const auto second = pattern.next(milliseconds{200}).value().value();
  CHECK(first != second);
  CHECK(first.at(300, 4) > first.at(30, 4));
  CHECK(first.height == 8);
}

TEST_CASE("the test pattern keeps its pace and can be interrupted") {
  TestPattern pattern(16, 16);
  CHECK_FALSE(pattern.next(milliseconds{1}).value());
  pattern.interrupt();
  CHECK_FALSE(pattern.next(milliseconds{60'000}).value());
}
