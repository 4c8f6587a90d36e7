#pragma once
// Intents on their way from any thread to the loop.

#include <functional>
#include <mutex>
#include <vector>

#include "kiosk/model/intent.hpp"

namespace rackside::kiosk {

class IntentQueue {
 public:
  /// `wake` is called after every post, from the posting thread; it makes the sleeping loop look.
  explicit IntentQueue(std::function<void()> wake) : wake_(std::move(wake)) {}

  void post(Intent intent);
  /// All that has been posted, in that order.
  [[nodiscard]] std::vector<Intent> take();

 private:
  std::function<void()> wake_;
  std::mutex mutex_;
  std::vector<Intent> intents_;
};

}  // namespace rackside::kiosk
