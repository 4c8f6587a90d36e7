#pragma once
// Signs of life for the service manager. One is given only when the loop came round and the thread
// that writes has answered it since: a program that still draws but no longer saves is dead.

#include <atomic>
#include <functional>

#include "kiosk/service/notifier.hpp"

namespace rackside::kiosk {

class Pulse {
 public:
  /// Since any fixed moment, by a clock that nobody sets.
  using Time = std::chrono::milliseconds;

  /// `ask` hands the writing thread a job that calls `answer` and wakes the loop.
  Pulse(const ServiceWish& wish, std::function<void()> ask);

  // On the loop's thread ------------------------------------------------------------------------

  /// A picture is on the screen; the first one means that the kiosk is ready.
  void shown();
  /// Call whenever the loop comes round: asks when it is time to, passes an answer on.
  void beat(Time now);
  /// When `beat` should be called; none while an answer is awaited or nobody asks for life signs.
  [[nodiscard]] std::optional<Time> next_deadline() const;
  void stopping() const { notifier_.stopping(); }

  // On the writing thread -----------------------------------------------------------------------

  void answer() { answered_ = true; }

 private:
  Notifier notifier_;
  std::optional<Time> interval_;
  std::function<void()> ask_;
  std::optional<Time> next_ = Time{0};
  std::atomic<bool> answered_ = false;
  bool ready_ = false;
};

}  // namespace rackside::kiosk
