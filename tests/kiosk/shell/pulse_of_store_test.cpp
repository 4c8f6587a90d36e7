// A store that hangs must end the signs of life, however well the screen still draws.

#include <condition_variable>
#include <mutex>

#include "core/clock/system_clock.hpp"
#include "core/clock/system_ids.hpp"
#include "kiosk/service/pulse.hpp"
#include "kiosk/shell/effect_runner.hpp"
#include "tests/fakes/fake_pin_keeper.hpp"
#include "tests/fakes/memory_log_store.hpp"
#include "tests/fakes/service_manager.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;
using namespace std::chrono_literals;

namespace {

// Opens once, for all who wait before it.
class Gate {
 public:
  void open() {
    const std::lock_guard lock(mutex_);
    open_ = true;
    changed_.notify_all();
  }
  void pass() {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [this] { return open_; });
  }

 private:
  std::mutex mutex_;
  std::condition_variable changed_;
  bool open_ = false;
};

class HangingLog : public MemoryLogStore {
 public:
  explicit HangingLog(Gate& gate) : MemoryLogStore(kiosk_number(1)), gate_(gate) {}
  Result<std::vector<Event>> append(const std::vector<Draft>& drafts, Instant now) override {
    gate_.pass();
    return MemoryLogStore::append(drafts, now);
  }

 private:
  Gate& gate_;
};

}  // namespace

TEST_CASE("a store that hangs ends the signs of life; one that comes back gives them again") {
  const TemporaryFolder folder;
  const std::string path = (folder / "notify").string();
  ServiceManager manager(path);
  Gate gate;
  SystemClock clock;
  SystemIds ids(clock);
  IntentQueue results([] {});
  CameraEye eye(results, [](const std::string&) { return nullptr; });
  EffectRunner runner({std::make_unique<HangingLog>(gate),
                       std::make_unique<MemoryLogStore>(kiosk_number(1)), clock, ids, results, eye,
                       [](const Settings&) { return Result<void>{}; },
                       [](const auto&, const Settings&) -> Result<PrintOutcome> {
                         return failure(ErrorKind::NotFound, "There is no printer.");
                       },
                       [](const CoverReading&, const Settings&) { return Result<std::string>{}; },
                       [](const ReturnReport&, const Settings&) { return Result<std::string>{}; },
                       [] { return PrintersFound{}; },
                       [](const EventId&, const GreyImage&) { return Result<std::string>{}; },
                       std::make_unique<FakePinKeeper>(), [] {}});
  Gate answered;
  Pulse* answering = nullptr;
  Pulse pulse(ServiceWish{path, 90s}, [&] {
    runner.ask([&] {
      answering->answer();
      answered.open();
    });
  });
  answering = &pulse;
  runner.run(SaveDrafts{{}});
  for (auto now = 1s; now < 200s; ++now) pulse.beat(now);
  CHECK(manager.next(50ms).empty());
  gate.open();
  answered.pass();
  pulse.beat(201s);
  CHECK(manager.next(1s) == "WATCHDOG=1");
}
