#include "kiosk/settings/settings_file.hpp"

#include <fstream>

#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

TEST_CASE("the settings stand beside the log") {
  CHECK(settings_path("/var/lib/rackside/log.db") == "/var/lib/rackside/log.settings.toml");
}

TEST_CASE("without a file everything is as usual") {
  const TemporaryFolder folder;
  CHECK(read_settings(folder / "none.toml").value() == Settings{});
}

TEST_CASE("what was kept is read again, whatever the names hold") {
  const TemporaryFolder folder;
  Settings settings;
  settings.palette = PaletteName::Night;
  settings.pixels_per_mm = 6.25;
  settings.blank_after = std::chrono::minutes{0};
  settings.motion = Motion::Off;
  settings.camera = "/dev/v4l/by-id/usb-\"Zoë's\"_0\\x";
  settings.printer = "labels 62 mm";
  settings.wording = {DateStyle::German, {LengthUnit::Inch, TemperatureUnit::Fahrenheit}};
  settings.printer_dpi = 203;
  settings.label_sheet = "roll-62x29";
  settings.aim = {0.25, 0.75, 0.5};
  REQUIRE(write_settings(folder / "s.toml", settings));
  CHECK(read_settings(folder / "s.toml").value() == settings);
}

TEST_CASE("a value that cannot be meant leaves the usual one, the others count") {
  const TemporaryFolder folder;
  std::ofstream(folder / "s.toml") << "palette = \"pink\"\nmotion = 7\npixels_per_mm = 0.0\n"
                                      "blank_after_minutes = -3\nprinter = \"lp\"\n"
                                      "[aim]\nx = 4.0\nside = 0.0\n";
  Settings expected;
  expected.printer = "lp";
  CHECK(read_settings(folder / "s.toml").value() == expected);
}

TEST_CASE("a file that is no TOML is told with its line and is left alone") {
  const TemporaryFolder folder;
  std::ofstream(folder / "s.toml") << "palette = \"day\"\nwhat is this\n";
  const auto read = read_settings(folder / "s.toml");
  REQUIRE_FALSE(read);
  CHECK(read.error().sentence.find("line 2") != std::string::npos);
}
