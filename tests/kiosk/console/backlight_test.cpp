// Values of bl_power: the kernel's Documentation/ABI/stable/sysfs-class-backlight and
// include/uapi/linux/fb.h (FB_BLANK_UNBLANK 0, FB_BLANK_POWERDOWN 4).

#include "kiosk/console/backlight.hpp"

#include <optional>

#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"

using namespace rackside::tests;
using namespace rackside::kiosk;

TEST_CASE("every lamp of the machine goes out and comes back") {
  const TemporaryFolder lamps;
  for (const char* lamp : {"panel", "second"}) {
    std::filesystem::create_directories(lamps / lamp);
    write_file(lamps / lamp / "bl_power", "0\n");
  }
  const Backlight backlight(lamps.path());
  CHECK(backlight.count() == 2);
  for (const bool on : {false, true, false}) {
    backlight.lit(on);
    CHECK(read_file(lamps / "panel/bl_power") == (on ? "0\n" : "4\n"));
    CHECK(read_file(lamps / "second/bl_power") == (on ? "0\n" : "4\n"));
  }
}

TEST_CASE("a program that ends in the dark leaves the lamp burning") {
  const TemporaryFolder lamps;
  std::filesystem::create_directories(lamps / "panel");
  write_file(lamps / "panel/bl_power", "0\n");
  {
    const Backlight backlight(lamps.path());
    backlight.lit(false);
    CHECK(read_file(lamps / "panel/bl_power") == "4\n");
  }
  CHECK(read_file(lamps / "panel/bl_power") == "0\n");
}

TEST_CASE("a machine without a lamp, or whose lamp has no switch, is left as it is") {
  const TemporaryFolder lamps;
  CHECK(Backlight(lamps / "missing").count() == 0);
  std::filesystem::create_directories(lamps / "panel");
  CHECK(Backlight(lamps.path()).count() == 0);
  Backlight(lamps.path()).lit(false);
  CHECK(std::filesystem::is_empty(lamps / "panel"));
}
