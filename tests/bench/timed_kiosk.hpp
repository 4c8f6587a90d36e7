#pragma once
// The real loop, threads and log, with inputs that are timed until they are in the picture.

#include <atomic>
#include <filesystem>
#include <memory>
#include <mutex>

#include "core/clock/system_clock.hpp"
#include "core/clock/system_ids.hpp"
#include "fonts/font_files.hpp"
#include "kiosk/shell/effect_runner.hpp"
#include "kiosk/shell/loop.hpp"
#include "tests/bench/timing.hpp"
#include "tests/fakes/dummy_display.hpp"

namespace rackside::bench {

/// An input that is on its way to the picture. One at a time.
struct Input {
  std::vector<SDL_Event> events;
  Times* to_picture;
  Times* to_answer;  // what the log had to say or to keep is in the picture too; may be null
};

class TimedKiosk {
 public:
  /// On the log at `path`, looking through `camera`.
  TimedKiosk(const std::filesystem::path& path, std::unique_ptr<FrameSource> camera);

  /// Runs the kiosk until `done`; `give` may hand in inputs from another thread meanwhile.
  void run(const std::atomic<bool>& done);
  /// From the thread of hands. Comes back when the input has been answered.
  void give(const Input& input);
  /// Everything is read and forecast once more.
  void reload();
  [[nodiscard]] int times_read() const { return overviews_; }

 private:
  void turn();
  void carry_out(const kiosk::Effect& effect);

  tests::DummyDisplay display_;
  std::unique_ptr<kiosk::FontBook> fonts_ = kiosk::FontBook::open(running_program()).value();
  SystemClock clock_;
  SystemIds ids_{clock_};
  SystemIds written_ids_{clock_};
  kiosk::EventWait sleep_;
  kiosk::Pulse pulse_{kiosk::ServiceWish{}, [] {}};
  kiosk::IntentQueue results_{[this] { sleep_.wake(); }};
  kiosk::CameraEye eye_{results_, [](const std::string&) { return nullptr; }};
  std::atomic<int> overviews_ = 0;
  std::mutex turning_;
  int answers_asked_ = 0;
  std::atomic<int> answers_due_ = 0;
  std::atomic<int> answers_posted_ = 0;
  std::atomic<bool> pending_ = false, drawn_ = false, answered_ = false;
  kiosk::EffectRunner runner_;
  kiosk::Loop loop_;
};

}  // namespace rackside::bench
