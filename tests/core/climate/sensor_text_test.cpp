#include "core/climate/sensor_text.hpp"

#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

SensorText read(std::string_view text) { return read_sensor_text(text, at_hour(5)).value(); }

}  // namespace

TEST_CASE("one line is a temperature and, where there is one, a humidity") {
  for (const char* line :
       {"24.5 61", "24.5C 61%", "24.5 C, 61 %\n", "24.5;61\r\n", "24.5°C 61%", "76.1 F 61"}) {
    INFO(line);
    const auto text = read(line);
    REQUIRE(text.readings.size() == 1);
    CHECK(text.readings[0].temperature->value == Approx(24.5));
    CHECK(text.readings[0].humidity == Percent{61});
    CHECK(text.readings[0].when == at_hour(5));
  }
  CHECK_FALSE(read("24.5\n").readings[0].humidity);
}

TEST_CASE("a CSV has its columns in any order, and columns of others are passed over") {
  const auto text = read(
      "battery,rack,humidity,when,temperature\n"
      "3.1,A,61,2031-04-09T21:30+02:00,24.5\n"
      "3.1,,,2031-04-09T22:30Z,23\n");
  REQUIRE(text.readings.size() == 2);
  CHECK(text.passed_over.empty());
  CHECK(text.readings[0] ==
        SensorReading{*parse_when("2031-04-09T21:30+02:00", {}), "A", Celsius{24.5}, Percent{61}});
  CHECK(text.readings[1].rack.empty());
  CHECK_FALSE(text.readings[1].humidity);
  CHECK(read("when;temperature;unit\n2031-04-09T21:30Z;77;F\n").readings[0].temperature->value ==
        Approx(25));
}

TEST_CASE("a damaged or impossible line is passed over and named, the others are kept") {
  const auto text = read(
      "when,temperature,humidity\n"
      "2031-04-09T21:30Z,24,60\n"
      "yesterday,24,60\n"
      "2031-04-09T21:40Z,240,60\n"
      "2031-04-09T21:50Z,24,160\n"
      "2031-04-09T22:00Z,,\n"
      "2031-04-09,24,60\n"
      "2031-04-09T22:1");  // the sensor was still writing
  CHECK(text.readings.size() == 1);
  REQUIRE(text.passed_over.size() == 6);
  CHECK(text.passed_over[1] == "Line 4 was passed over: its temperature cannot be.");
}

TEST_CASE("what is neither is refused") {
  for (const char* text : {"", "\n", "hello", "24.5 61 7", "24.5 61\n24.6 60\n", "when,colour\n",
                           "temperature,humidity\n24,60\n", "99 61", "24 161"}) {
    INFO(text);
    const auto result = read_sensor_text(text, at_hour(5));
    REQUIRE_FALSE(result);
    CHECK(result.error().kind == ErrorKind::BadInput);
  }
}

TEST_CASE("only what is new and some time apart is worth keeping, rack by rack") {
  std::vector<SensorReading> every_ten_minutes;
  for (int i = 0; i < 12; ++i)
    every_ten_minutes.push_back({at_hour(10 + i / 6.0), i % 2 ? "A" : "", Celsius{24}, {}});
  const auto all = worth_keeping(every_ten_minutes, {}, std::chrono::minutes{60});
  CHECK(all.size() == 4);  // two racks, two hours
  RoomClimate known;
  known.racks["A"].temperature = TemperatureReading{Celsius{24}, at_hour(13)};
  CHECK(worth_keeping(every_ten_minutes, known, std::chrono::minutes{60}).size() == 2);
}

TEST_CASE("no text makes the reader fall over") {
  rc::prop("any text", [](const std::string& noise) {
    const auto read = read_sensor_text("when,temperature,humidity,rack\n" + noise, at_hour(1));
    RC_ASSERT(read.has_value());
    for (const auto& reading : read->readings)
      RC_ASSERT(reading.temperature.has_value() || reading.humidity.has_value());
    static_cast<void>(read_sensor_text(noise, at_hour(1)));
  });
}
