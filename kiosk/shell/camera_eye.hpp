#pragma once
// The camera as the kiosk uses it: its news as intents, changed and watched as effects ask for.

#include <atomic>
#include <functional>
#include <memory>

#include "kiosk/camera/camera_worker.hpp"
#include "kiosk/camera/newest_picture.hpp"
#include "kiosk/model/effect.hpp"
#include "kiosk/shell/intent_queue.hpp"
#include "kiosk/shell/job_thread.hpp"

namespace rackside::kiosk {

/// Ending one camera and starting another takes up to a second, so a thread of its own does that,
/// in the order in which it is asked for; nothing here waits.
class CameraEye {
 public:
  using OpenSource = std::function<std::unique_ptr<FrameSource>(const std::string& path)>;

  /// `open` gives none for an empty path.
  CameraEye(IntentQueue& results, OpenSource open);
  ~CameraEye() { changes_.finish(); }
  CameraEye(const CameraEye&) = delete;
  CameraEye& operator=(const CameraEye&) = delete;

  /// Looks through `source` in the place of the settings' camera, until another one is chosen.
  void look_through(std::unique_ptr<FrameSource> source, const Settings& settings);
  /// Looks through the camera that the settings name, aimed as they say.
  void follow(const Settings& settings);
  void watch(Watching watching);
  void find_cameras();

  /// For CameraSight::picture: that picture or a newer one.
  [[nodiscard]] std::shared_ptr<const GreyImage> newest_picture() const { return newest_.get(); }

 private:
  void start(std::unique_ptr<FrameSource> source, const Settings& settings);
  void tell(CameraWorker& worker);
  void show(const CameraWorker& worker);

  IntentQueue& results_;
  OpenSource open_;
  NewestPicture newest_;
  std::atomic<Watching> watching_ = Watching::Codes;

  // Of the thread of changes alone, but for `camera_`, which stays as it is while a worker runs.
  std::string camera_;
  std::unique_ptr<CameraWorker> worker_;
  JobThread changes_;  // last: it uses all of the above
};

/// What the kiosk is to do with a piece of news.
[[nodiscard]] Intent intent_of(const CameraNews& news);

}  // namespace rackside::kiosk
