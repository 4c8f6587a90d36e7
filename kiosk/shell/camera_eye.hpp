#pragma once
// The camera's news as intents.

#include "kiosk/camera/camera_worker.hpp"
#include "kiosk/shell/intent_queue.hpp"

namespace rackside::kiosk {

class CameraEye {
 public:
  /// Looks through `source` until it is destroyed.
  CameraEye(std::unique_ptr<FrameSource> source, Aim aim, IntentQueue& results);

 private:
  void tell();

  IntentQueue& results_;
  CameraWorker worker_;  // last: its thread calls `tell`
};

/// What the kiosk is to do with a piece of news.
[[nodiscard]] Intent intent_of(const CameraNews& news);

}  // namespace rackside::kiosk
