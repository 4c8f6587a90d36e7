#pragma once
// The thread that looks through the camera, so that the screen never waits for it.

#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>
#include <thread>

#include "kiosk/camera/camera_view.hpp"
#include "kiosk/camera/frame_change.hpp"
#include "kiosk/camera/view_watch.hpp"
#include "kiosk/frames/frame_source.hpp"

namespace rackside {

struct CameraPace {
  std::chrono::milliseconds interval{100};  // from frame to frame, at least
  std::chrono::milliseconds budget{36};     // for reading one frame, which then ends within 40
  std::chrono::milliseconds retry{1000};    // until a lost source is looked for again
};

/// Who is watching: with a live picture on the screen every frame is news.
enum class Watched { NewsOnly, EveryFrame };

class CameraWorker {
 public:
  using OnNews = std::function<void(CameraWorker&)>;

  /// `on_news` is called from the worker's thread, after something new can be taken; it should do
  /// no more than wake the screen's thread. The thread starts at once and ends with the object.
  CameraWorker(std::unique_ptr<FrameSource> source, Aim aim, OnNews on_news, CameraPace pace = {});
  ~CameraWorker();
  CameraWorker(const CameraWorker&) = delete;
  CameraWorker& operator=(const CameraWorker&) = delete;

  /// What happened since the last call, in order.
  [[nodiscard]] std::vector<CameraNews> take_news();
  [[nodiscard]] CameraView view() const;
  void aim_at(Aim aim);
  void watch(Watched watched);

 private:
  using Clock = std::chrono::steady_clock;

  void run();
  void one_frame();
  void look_at(const std::shared_ptr<const GreyImage>& frame);
  void announce(const Reading& reading);
  void source_failed(const Error& why);
  void publish(CameraView view, std::vector<CameraNews> news);
  void sleep_until(Clock::time_point time);

  const std::unique_ptr<FrameSource> source_;
  const OnNews on_news_;
  const CameraPace pace_;

  mutable std::mutex mutex_;  // guards what follows
  std::condition_variable stopping_;
  bool stop_ = false;
  Aim aim_;
  Watched watched_ = Watched::NewsOnly;
  CameraView view_;
  std::vector<CameraNews> news_;

  // Of the worker's thread alone.
  FrameReader reader_;
  FrameChange change_;
  ViewWatch view_watch_;
  Reading last_reading_;
  Aim last_aim_;
  std::optional<Guidance> last_guidance_;
  bool lost_ = false;
  int repeats_left_ = 0;  // of reading a still picture

  std::thread thread_;  // last: it uses all of the above
};

}  // namespace rackside
