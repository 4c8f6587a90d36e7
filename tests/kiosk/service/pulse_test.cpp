#include "kiosk/service/pulse.hpp"

#include "tests/fakes/service_manager.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;
using namespace std::chrono_literals;

namespace {

struct Service {
  TemporaryFolder folder;
  std::string path = (folder / "notify").string();
  ServiceManager manager{path};
  int asked = 0;
  Pulse pulse{ServiceWish{path, 90s}, [this] { ++asked; }};

  std::string hears() { return manager.next(0ms); }
};

}  // namespace

TEST_CASE("ready is told once, with the first picture") {
  Service service;
  service.pulse.beat(1s);
  CHECK(service.hears().empty());
  service.pulse.shown();
  service.pulse.shown();
  CHECK(service.hears() == "READY=1");
  CHECK(service.hears().empty());
}

TEST_CASE("a sign of life needs the loop and the answer of the writing thread") {
  Service service;
  service.pulse.beat(1s);
  CHECK(service.asked == 1);
  CHECK(service.hears().empty());
  service.pulse.answer();
  CHECK(service.hears().empty());  // the loop has not come round
  service.pulse.beat(2s);
  CHECK(service.hears() == "WATCHDOG=1");
  CHECK(service.asked == 1);
  CHECK(service.pulse.next_deadline() == 32s);
  service.pulse.beat(32s);
  CHECK(service.asked == 2);
}

TEST_CASE("a writing thread that hangs gets no second question, and the signs of life stop") {
  Service service;
  service.pulse.beat(1s);
  for (auto now = 2s; now < 300s; ++now) service.pulse.beat(now);
  CHECK(service.asked == 1);
  CHECK_FALSE(service.pulse.next_deadline());
  CHECK(service.hears().empty());
}

TEST_CASE("without a watchdog nothing is asked and nothing wakes the loop") {
  int asked = 0;
  Pulse pulse(ServiceWish{}, [&] { ++asked; });
  pulse.beat(1s);
  CHECK(asked == 0);
  CHECK_FALSE(pulse.next_deadline());
}
