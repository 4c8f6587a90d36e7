#pragma once
// A queue of intents that a test waits on, as the loop does.

#include <condition_variable>
#include <mutex>
#include <stdexcept>
#include <vector>

#include "kiosk/shell/intent_queue.hpp"

namespace rackside::tests {

class Mailbox {
 public:
  kiosk::IntentQueue queue{[this] {
    const std::lock_guard lock(mutex_);
    woken_ = true;
    changed_.notify_one();
  }};

  /// The next result of this kind; others are passed over. Throws when nothing comes any more.
  template <class Kind>
  Kind wait_for() {
    for (;;) {
      for (; !intents_.empty(); intents_.erase(intents_.begin()))
        if (const auto* found = std::get_if<Kind>(&intents_.front())) {
          Kind result = *found;
          intents_.erase(intents_.begin());
          return result;
        }
      std::unique_lock lock(mutex_);
      if (!changed_.wait_for(lock, patience, [this] { return woken_; }))
        throw std::runtime_error("the result that was waited for never came");
      woken_ = false;
      lock.unlock();
      for (kiosk::Intent& intent : queue.take()) intents_.push_back(std::move(intent));
    }
  }

 private:
  static constexpr std::chrono::seconds patience{60};  // with a sanitizer on a busy machine

  std::mutex mutex_;
  std::condition_variable changed_;
  bool woken_ = false;
  std::vector<kiosk::Intent> intents_;
};

}  // namespace rackside::tests
