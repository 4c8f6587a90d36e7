#include "core/sensor_file/sensor_file.hpp"

#include <fstream>

#include "tests/frame.hpp"

using namespace rackside;
namespace fs = std::filesystem;

TEST_CASE("a one-line file was read when it was written") {
  const fs::path path = fs::temp_directory_path() / "rackside_sensor_file_test.txt";
  std::ofstream(path) << "24.5 61\n";
  const auto text = read_sensor_file(path, std::chrono::minutes{120});
  REQUIRE(text);
  REQUIRE(text->readings.size() == 1);
  CHECK(text->readings[0].temperature == Celsius{24.5});
  const auto age = std::chrono::system_clock::now() - text->readings[0].when.moment.utc;
  CHECK(age > std::chrono::seconds{-1});
  CHECK(age < std::chrono::minutes{1});
  CHECK(text->readings[0].when.moment.offset == std::chrono::minutes{120});
  std::ofstream(path) << "not a reading";
  CHECK(read_sensor_file(path, {}).error().where == path.string());
  fs::remove(path);
}

TEST_CASE("a file that is not there, or is a folder, is a sentence and no crash") {
  CHECK(read_sensor_file("/nowhere/sensor.txt", {}).error().kind == ErrorKind::NotFound);
  CHECK_FALSE(read_sensor_file(fs::temp_directory_path(), {}));
}
