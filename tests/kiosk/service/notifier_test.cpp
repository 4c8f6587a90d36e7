// The protocol as sd_notify(3) and sd_watchdog_enabled(3) of systemd 252 describe it.

#include "kiosk/service/notifier.hpp"

#include <unistd.h>

#include <cstdlib>

#include "tests/fakes/service_manager.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;
using namespace std::chrono_literals;

namespace {

struct Variables {
  void set(const char* name, const std::string& value) const { setenv(name, value.c_str(), 1); }
  ~Variables() {
    for (const char* name : {"NOTIFY_SOCKET", "WATCHDOG_USEC", "WATCHDOG_PID"}) unsetenv(name);
  }
};

}  // namespace

TEST_CASE("a service manager hears that the kiosk is ready, alive and stopping") {
  const TemporaryFolder folder;
  const std::string path = (folder / "notify").string();
  ServiceManager manager(path);
  const Notifier notifier(path);
  notifier.ready();
  notifier.alive();
  notifier.stopping();
  CHECK(manager.next(1s) == "READY=1");
  CHECK(manager.next(1s) == "WATCHDOG=1");
  CHECK(manager.next(1s) == "STOPPING=1");
}

TEST_CASE("a service manager may listen in the abstract namespace") {
  const std::string name = "@rackside-test-" + std::to_string(getpid());
  ServiceManager manager(name);
  Notifier(name).ready();
  CHECK(manager.next(1s) == "READY=1");
}

TEST_CASE("nobody listening is no trouble") {
  Notifier("").ready();
  Notifier("/nowhere/at/all").ready();
  Notifier(std::string(300, 'x')).ready();
}

TEST_CASE("what the service manager asks for is read from the environment") {
  const Variables variables;
  CHECK(service_wish() == ServiceWish{});
  variables.set("NOTIFY_SOCKET", "/run/systemd/notify");
  variables.set("WATCHDOG_USEC", "90000000");
  CHECK(service_wish() == ServiceWish{"/run/systemd/notify", 90s});
  variables.set("WATCHDOG_PID", std::to_string(getpid()));
  CHECK(service_wish().watchdog == 90s);
}

TEST_CASE("a watchdog that is meant for another process, or is no number, is not ours") {
  const Variables variables;
  variables.set("WATCHDOG_USEC", "90000000");
  variables.set("WATCHDOG_PID", std::to_string(getpid() + 1));
  CHECK_FALSE(service_wish().watchdog);
  variables.set("WATCHDOG_PID", std::to_string(getpid()));
  variables.set("WATCHDOG_USEC", "soon");
  CHECK_FALSE(service_wish().watchdog);
}
