#include "kiosk/hands/blanking.hpp"

#include "tests/frame.hpp"

using namespace rackside::kiosk;
using namespace std::chrono_literals;

namespace {

Blanking after_ten_minutes() {
  Blanking blanking;
  blanking.set_after(10min);
  return blanking;
}

}  // namespace

TEST_CASE("the screen goes dark ten minutes after the last touch, not before") {
  Blanking blanking = after_ten_minutes();
  CHECK_FALSE(blanking.touched(5min));
  CHECK(blanking.next_deadline() == 15min);
  blanking.tick(15min - 1ms);
  CHECK_FALSE(blanking.dark());
  blanking.tick(15min);
  CHECK(blanking.dark());
  CHECK_FALSE(blanking.next_deadline());
}

TEST_CASE("the touch that wakes it does nothing else, nor does the knock that follows at once") {
  Blanking blanking = after_ten_minutes();
  blanking.tick(10min);
  CHECK(blanking.touched(11min));
  CHECK_FALSE(blanking.dark());
  CHECK(blanking.touched(11min + 180ms));
  CHECK_FALSE(blanking.touched(11min + 600ms));
}

TEST_CASE("woken, it goes dark again after the same time") {
  Blanking blanking = after_ten_minutes();
  blanking.tick(10min);
  blanking.touched(60min);
  CHECK(blanking.next_deadline() == 70min);
  blanking.tick(70min);
  CHECK(blanking.dark());
}

TEST_CASE("a screen that is never to go dark does not, and comes back when that is chosen") {
  Blanking blanking;
  CHECK_FALSE(blanking.next_deadline());
  blanking.tick(24h);
  CHECK_FALSE(blanking.dark());
  blanking.set_after(1min);
  blanking.tick(25h);
  CHECK(blanking.dark());
  blanking.set_after(0min);
  CHECK_FALSE(blanking.dark());
}
