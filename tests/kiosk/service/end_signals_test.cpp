#include "kiosk/service/end_signals.hpp"

#include <signal.h>

#include <atomic>
#include <chrono>
#include <thread>

#include "tests/frame.hpp"

using namespace rackside::kiosk;
using namespace std::chrono_literals;

namespace {

bool comes_true(const std::function<bool()>& what) {
  for (int i = 0; i < 400; ++i, std::this_thread::sleep_for(5ms))
    if (what()) return true;
  return false;
}

}  // namespace

TEST_CASE("each of the signals that end a program calls for its end") {
  std::atomic<int> ends = 0;
  const EndSignals signals([&] { ++ends; });
  for (const int signal : {SIGTERM, SIGINT, SIGHUP}) {
    const int before = ends;
    raise(signal);
    CHECK(comes_true([&] { return ends == before + 1; }));
  }
}

TEST_CASE("afterwards a signal means what it always means") {
  {
    const EndSignals signals([] {});
  }
  struct sigaction now {};
  sigaction(SIGTERM, nullptr, &now);
  CHECK(now.sa_handler == SIG_DFL);
}
