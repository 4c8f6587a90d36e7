#include "kiosk/shell/intent_queue.hpp"

#include <utility>

namespace rackside::kiosk {

void IntentQueue::post(Intent intent) {
  {
    const std::lock_guard lock(mutex_);
    intents_.push_back(std::move(intent));
  }
  wake_();
}

std::vector<Intent> IntentQueue::take() {
  const std::lock_guard lock(mutex_);
  return std::exchange(intents_, {});
}

}  // namespace rackside::kiosk
