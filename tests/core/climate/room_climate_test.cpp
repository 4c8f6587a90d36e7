#include "core/climate/room_climate.hpp"

#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

Event read(std::int64_t order, double hour, Details details) {
  Event event = make_event(order, hour, animal_number(1), std::move(details));
  event.animal.reset();
  return event;
}

}  // namespace

TEST_CASE("the last reading of a rack holds, and where it has none the room's") {
  const auto climate = fold_climate(
      {read(1, 1, TemperatureRead{Celsius{24}, ""}), read(2, 2, TemperatureRead{Celsius{26}, "A"}),
       read(3, 3, TemperatureRead{Celsius{27}, "A"}), read(4, 4, HumidityRead{Percent{55}, ""})});
  CHECK(climate.at("A").temperature == TemperatureReading{Celsius{27}, at_hour(3)});
  CHECK(climate.at("A").humidity == HumidityReading{Percent{55}, at_hour(4)});
  CHECK(climate.at("B").temperature == TemperatureReading{Celsius{24}, at_hour(1)});
  CHECK_FALSE(RoomClimate{}.at("A").temperature);
}

TEST_CASE("a reading inside a tub says nothing about the room") {
  CHECK(fold_climate({make_event(1, 1, animal_number(1), TemperatureRead{Celsius{30}, ""})}) ==
        RoomClimate{});
}

TEST_CASE("a reading that is taken back is forgotten") {
  const auto climate = fold_climate({read(1, 1, TemperatureRead{Celsius{24}, "A"}),
                                     read(2, 2, TemperatureRead{Celsius{99}, "A"}),
                                     read(3, 3, Retracted{event_number(2)})});
  CHECK(climate.at("A").temperature->value == Celsius{24});
}
