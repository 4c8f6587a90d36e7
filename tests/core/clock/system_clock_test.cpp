#include "core/clock/system_clock.hpp"

#include <cstdlib>

#include "core/clock/system_ids.hpp"
#include "tests/fakes/fixed_clock.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace std::chrono;

namespace {

// The machine's zone for one test, without needing the zone database: POSIX rules.
class Zone {
 public:
  explicit Zone(const char* rule) { setenv("TZ", rule, 1); }
  ~Zone() { unsetenv("TZ"); }
};

Instant noon(int month, int day) { return Instant{Day{year{2031} / month / day}} + hours{12}; }

constexpr const char* central_europe = "CET-1CEST,M3.5.0,M10.5.0/3";

}  // namespace

TEST_CASE("the offset is that of the season asked for") {
  const Zone zone(central_europe);
  SystemClock clock;
  CHECK(clock.offset_at(noon(1, 15)) == hours{1});
  CHECK(clock.offset_at(noon(7, 15)) == hours{2});
}

TEST_CASE("the clock follows a change of the time zone while the program runs") {
  SystemClock clock;
  {
    const Zone zone(central_europe);
    CHECK(clock.offset_at(noon(1, 15)) == hours{1});
  }
  {
    const Zone zone("NPT-5:45");
    CHECK(clock.offset_at(noon(1, 15)) == minutes{345});
  }
  {
    const Zone zone("NST3:30");
    CHECK(clock.offset_at(noon(1, 15)) == -minutes{210});
  }
}

TEST_CASE("now is now") {
  SystemClock clock;
  const auto before = floor<milliseconds>(system_clock::now());
  const Moment now = clock.now();
  CHECK(now.utc >= before);
  CHECK(now.utc <= system_clock::now());
  CHECK(now.offset == clock.offset_at(now.utc));
}

TEST_CASE("ids sort in the order in which they were made, and carry the clock's time") {
  FixedClock clock({noon(4, 9), hours{0}});
  SystemIds ids(clock);
  const Uuid first = ids.next();
  CHECK(instant_of(first) == noon(4, 9));
  Uuid last = first;
  for (int i = 0; i < 1000; ++i) {
    const Uuid next = ids.next();
    REQUIRE(last < next);
    last = next;
  }
  clock.advance(-hours{1});
  CHECK(last < ids.next());
}

TEST_CASE("random bits are not the same twice") { CHECK(random_bits() != random_bits()); }
