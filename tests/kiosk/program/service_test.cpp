// The real program under a service manager, and installed as it is installed.

#include <chrono>
#include <fstream>
#include <thread>

#include "tests/fakes/service_manager.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"
#include "tests/kiosk/program/desk.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace std::chrono_literals;

namespace {

const std::filesystem::path build = std::filesystem::path(RACKSIDE_BIN_DIR).parent_path();

std::optional<Desk> desk_or_skip() {
  auto desk = Desk::open();
  if (!desk) WARN("skipped: Xvfb or xdotool is not here");
  return desk;
}

bool installed_into(const std::filesystem::path& prefix) {
  std::string said;
  const bool done =
      run({"cmake", "--install", build.string(), "--prefix", prefix.string()}, said, {}) == 0;
  INFO(said);
  CHECK(done);
  return done;
}

}  // namespace

TEST_CASE("a service manager hears ready, signs of life for as long as it runs, and stopping") {
  auto desk = desk_or_skip();
  if (!desk) return;
  const std::string path = (desk->folder() / "notify").string();
  ServiceManager manager(path);
  desk->set("NOTIFY_SOCKET=" + path);
  desk->set("WATCHDOG_USEC=600000");
  desk->start_kiosk();
  CHECK(manager.next(20s) == "READY=1");
  for (int i = 0; i < 5; ++i) CHECK(manager.next(20s) == "WATCHDOG=1");
  CHECK(desk->end_kiosk() == 0);
  std::string last;
  for (std::string said; !(said = manager.next(100ms)).empty();) last = said;
  CHECK(last == "STOPPING=1");
}

TEST_CASE("what is installed runs from where it was installed, with its own typefaces") {
  auto desk = desk_or_skip();
  if (!desk) return;
  const TemporaryFolder prefix;
  if (!installed_into(prefix.path())) return;
  for (const char* file : {"bin/rackside", "bin/rackside-log", "bin/rackside-labels",
                           "lib/systemd/system/rackside.service", "lib/sysusers.d/rackside.conf",
                           "lib/udev/rules.d/70-rackside.rules", "share/doc/rackside/install.md"})
    CHECK(std::filesystem::exists(prefix / file));
  CHECK_FALSE(std::filesystem::is_empty(prefix / "share/rackside/fonts"));
  desk->start_kiosk({}, (prefix / "bin/rackside").string());
  desk->scan("https://example.org/not-ours");
  CHECK(desk->tells("This label is not one of ours."));
  CHECK(desk->end_kiosk() == 0);
}

TEST_CASE("the unit is one that systemd understands, and starts what was installed") {
  std::string said;
  if (run({"sh", "-c", "command -v systemd-analyze"}, said) != 0) {
    WARN("skipped: systemd-analyze is not here");
    return;
  }
  const TemporaryFolder prefix;
  if (!installed_into(prefix.path())) return;
  const auto unit = prefix / "lib/systemd/system/rackside.service";
  CHECK(read_file(unit).find("ExecStart=" + (prefix / "bin/rackside").string()) !=
        std::string::npos);
  const int code = run({"systemd-analyze", "verify", unit.string()}, said);
  INFO(said);
  CHECK(code == 0);
  CHECK(said.find("rackside.service:") == std::string::npos);
}
