#include "kiosk/service/pulse.hpp"

#include <utility>

namespace rackside::kiosk {
namespace {

// sd_watchdog_enabled(3) advises half of the time. A third leaves room for a slow card: a question
// that waits behind one long save is still answered before the time is up.
constexpr int beats_in_time = 3;

}  // namespace

Pulse::Pulse(const ServiceWish& wish, std::function<void()> ask)
    : notifier_(wish.socket), ask_(std::move(ask)) {
  if (wish.watchdog) interval_ = *wish.watchdog / beats_in_time;
}

void Pulse::shown() {
  if (!std::exchange(ready_, true)) notifier_.ready();
}

void Pulse::beat(Time now) {
  if (!interval_) return;
  if (answered_.exchange(false)) {
    notifier_.alive();
    next_ = now + *interval_;
  }
  if (!next_ || now < *next_) return;
  next_.reset();
  ask_();
}

std::optional<Pulse::Time> Pulse::next_deadline() const { return interval_ ? next_ : std::nullopt; }

}  // namespace rackside::kiosk
