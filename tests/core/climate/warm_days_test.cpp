#include "core/climate/warm_days.hpp"

#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

WarmDays read(std::initializer_list<std::tuple<int, double, const char*>> readings) {
  WarmDays days;
  int order = 0;
  for (const auto& [hour, degrees, rack] : readings) {
    Event event = make_event(++order, hour, {}, TemperatureRead{Celsius{degrees}, rack});
    event.animal.reset();
    apply(days, event);
  }
  return days;
}

Day day(int number) { return at_hour(24.0 * number).moment.day(); }

}  // namespace

TEST_CASE("a day is as warm as the mean of what was read on it") {
  const auto days = read({{1, 20, ""}, {9, 26, ""}, {25, 24, ""}});
  CHECK(days.at("A", day(0)) == std::vector<WarmDay>{{day(0), Celsius{23}}, {day(1), Celsius{24}}});
  CHECK(days.at("A", day(1)) == std::vector<WarmDay>{{day(1), Celsius{24}}});
}

TEST_CASE("a rack's own reading goes before the room's on the same day") {
  const auto days = read({{1, 20, ""}, {2, 28, "A"}, {25, 21, ""}});
  CHECK(days.at("A", day(0)) == std::vector<WarmDay>{{day(0), Celsius{28}}, {day(1), Celsius{21}}});
  CHECK(days.at("B", day(0)) == std::vector<WarmDay>{{day(0), Celsius{20}}, {day(1), Celsius{21}}});
}

TEST_CASE("what was read inside a tub says nothing about the room") {
  WarmDays days;
  apply(days, make_event(1, 1, animal_number(1), TemperatureRead{Celsius{30}, "A"}));
  CHECK(days.racks.empty());
}

TEST_CASE("a reading that is taken back no longer counts in its day") {
  auto days = read({{1, 20, ""}, {9, 26, ""}, {25, 24, ""}});
  forget(days, event_number(2));
  CHECK(days.at("A", day(0)) == std::vector<WarmDay>{{day(0), Celsius{20}}, {day(1), Celsius{24}}});
  forget(days, event_number(1));
  CHECK(days.at("A", day(0)) == std::vector<WarmDay>{{day(1), Celsius{24}}});
}
