#include "tests/core/round/rack_room.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

// Five tubs in rack A, of which the first `refusing` refused two days ago; five that eat in rack B.
RackRoom two_racks(int refusing) {
  RackRoom room;
  for (int i = 1; i <= 10; ++i) {
    room.tub(i, {i <= 5 ? "A" : "B", "1", std::to_string(i)});
    room.happened(2, i, Offered{i <= refusing ? Outcome::Refused : Outcome::Took});
  }
  return room;
}

void read(RackRoom& room, std::string rack, double celsius, double percent, double days = 0.1) {
  room.add(days, std::nullopt, TemperatureRead{Celsius{celsius}, rack});
  room.add(days, std::nullopt, HumidityRead{Percent{percent}, rack});
  room.climate = fold_climate(room.log);
}

}  // namespace

TEST_CASE("a whole rack that refuses in the cold is told to be cold") {
  auto room = two_racks(5);
  read(room, "A", 17, 60);
  REQUIRE(room.plan().notes.size() == 1);
  CHECK(room.plan().notes[0] ==
        RackNote{"A",
                 "Rack A: 5 of 5 tubs refused lately, and it is 17 °C. Too cold: warm it first."});
}

TEST_CASE(
    "a whole rack that refuses in the warmth has another cause, and without a reading nobody "
    "knows") {
  auto warm = two_racks(5);
  read(warm, "A", 25, 60);
  CHECK(warm.plan().notes.at(0).sentence.find("another cause") != std::string::npos);
  CHECK(two_racks(5).plan().notes.at(0).sentence.find("Read the temperature") != std::string::npos);
  auto stale = two_racks(5);
  read(stale, "A", 17, 60, 8);
  CHECK(stale.plan().notes.at(0).sentence.find("Read the temperature") != std::string::npos);
}

TEST_CASE("a rack in which some eat is not told anything, cold or not") {
  auto room = two_racks(3);
  read(room, "A", 17, 60);
  CHECK(room.plan().notes.empty());
}

TEST_CASE("dry air is named where a moult is near, and only there") {
  auto room = two_racks(0);
  read(room, "", 25, 35);
  CHECK(room.plan().notes.empty());
  room.believed(7, 0.9).believed(8, 0.9);
  REQUIRE(room.plan().notes.size() == 1);
  CHECK(room.plan().notes[0].sentence == "Rack B: 35 % humidity and 2 moults near. Too dry: mist.");
  CHECK(room.plan("A").notes.empty());
}
