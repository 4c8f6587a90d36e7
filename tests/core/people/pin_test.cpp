#include "core/people/pin.hpp"

#include <array>

#include "tests/frame.hpp"

using namespace rackside;
using namespace std::chrono_literals;

TEST_CASE("a PIN has four to eight digits and is none of the first that are tried") {
  // Common practice, no source: what people choose when they choose without thinking.
  for (const char* fine : {"7294", "60315", "135790", "48271936"}) CHECK(judge_new_pin(fine));
  for (const char* refused : {"", "729", "123456789", "72a4", "72 4", "0000", "777777", "1234",
                              "4321", "8901", "87654", "1212", "123123", "2580", "1987", "2026"}) {
    INFO(refused);
    CHECK_FALSE(judge_new_pin(refused));
  }
}

TEST_CASE("three tries are free, then the wait doubles up to an hour") {
  const std::array<std::chrono::seconds, 12> waits{0s,   0s,   0s,   30s,   60s,   120s,
                                                   240s, 480s, 960s, 1920s, 3600s, 3600s};
  for (std::size_t wrong = 0; wrong < waits.size(); ++wrong)
    CHECK(wait_after(static_cast<int>(wrong)) == waits[wrong]);
  CHECK(wait_after(1'000'000) == 3600s);
}

TEST_CASE("all PINs of four digits take more than a year to try") {
  std::chrono::seconds all{0};
  for (int wrong = 0; wrong < 10'000; ++wrong) all += wait_after(wrong);
  CHECK(all > 365 * 24h);
}

TEST_CASE("a wait is counted from the last wrong try") {
  PinTries tries(2);
  CHECK(tries.left(0s) == 0s);
  tries.begin(10s);
  CHECK(tries.left(10s) == 30s);
  CHECK(tries.left(39s) == 1s);
  CHECK(tries.left(40s) == 0s);
  tries.right();
  CHECK(tries.left(41s) == 0s);
}
