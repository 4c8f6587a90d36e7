#include "kiosk/console/access.hpp"

#include <cstdlib>

#include "kiosk/console/display_density.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"

using namespace rackside::tests;
using namespace rackside::kiosk;
using Devices = ConsoleAccess::Devices;

TEST_CASE("a machine without screen or input devices is seen to have none") {
  const TemporaryFolder machine;
  CHECK(look_at_console(machine.path()) == ConsoleAccess{Devices::None, Devices::None});
}

TEST_CASE("devices that may be opened are seen as such, others of the folder are not counted") {
  const TemporaryFolder machine;
  std::filesystem::create_directories(machine / "dri");
  std::filesystem::create_directories(machine / "input");
  write_file(machine / "dri/renderD128", "");
  write_file(machine / "input/mouse0", "");
  CHECK(look_at_console(machine.path()) == ConsoleAccess{Devices::None, Devices::None});
  write_file(machine / "dri/card1", "");
  write_file(machine / "input/event0", "");
  CHECK(look_at_console(machine.path()) == ConsoleAccess{Devices::Open, Devices::Open});
}

TEST_CASE("what is missing is said with what to do about it") {
  CHECK(screen_advice({Devices::None, Devices::Open}).find("/dev/dri") != std::string::npos);
  CHECK(screen_advice({Devices::Forbidden, Devices::Open}).find("usermod -aG video,render,input") !=
        std::string::npos);
  CHECK(screen_advice({Devices::Open, Devices::Open}).find("Another program") != std::string::npos);
  for (const auto screens : {Devices::None, Devices::Forbidden, Devices::Open})
    CHECK(screen_advice({screens, {}}).find("The log is untouched.") != std::string::npos);
  CHECK(input_advice({Devices::Open, Devices::Forbidden}).find("group input") != std::string::npos);
  CHECK(input_advice({Devices::Open, Devices::Open}).empty());
}

TEST_CASE("the console is drawn on only where there is no desktop and nobody chose otherwise") {
  for (const char* variable : {"SDL_VIDEODRIVER", "DISPLAY", "WAYLAND_DISPLAY"}) unsetenv(variable);
  CHECK(console_driver() == "KMSDRM");
  for (const char* variable : {"SDL_VIDEODRIVER", "DISPLAY", "WAYLAND_DISPLAY"}) {
    setenv(variable, "x", 1);
    CHECK(console_driver().empty());
    unsetenv(variable);
  }
}
