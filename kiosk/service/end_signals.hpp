#pragma once
// SIGTERM, SIGINT and SIGHUP end the program as it should end: what was tapped is saved first.
// SDL's own handlers leave a flag that a sleeping loop may not see before the next touch.

#include <functional>
#include <thread>

#include "kiosk/frames/doorbell.hpp"

namespace rackside::kiosk {

/// One at a time. While it lives, each of the signals calls `end` on a thread of its own.
class EndSignals {
 public:
  explicit EndSignals(std::function<void()> end);
  ~EndSignals();
  EndSignals(const EndSignals&) = delete;
  EndSignals& operator=(const EndSignals&) = delete;

 private:
  void listen(const std::function<void()>& end) const;

  Descriptor hears_;
  Descriptor calls_;
  std::thread thread_;
};

}  // namespace rackside::kiosk
