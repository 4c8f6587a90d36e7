#pragma once
// A frame source that gives what the test pushes into it, when the test pushes it.

#include <condition_variable>
#include <deque>
#include <mutex>

#include "kiosk/frames/frame_source.hpp"

namespace rackside::tests {

class ScriptedFrames final : public FrameSource {
 public:
  using Step = Result<std::optional<GreyImage>>;

  void push(Step step) {
    const std::lock_guard lock(mutex_);
    steps_.push_back(std::move(step));
    changed_.notify_all();
  }
  /// Until everything pushed was taken.
  void wait_until_taken() {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [this] { return steps_.empty() && waiting_; });
  }

  [[nodiscard]] Step next(std::chrono::milliseconds patience) override {
    std::unique_lock lock(mutex_);
    waiting_ = true;
    changed_.notify_all();
    changed_.wait_for(lock, patience, [this] { return !steps_.empty() || interrupted_; });
    waiting_ = false;
    interrupted_ = false;
    if (steps_.empty()) return std::nullopt;
    Step step = std::move(steps_.front());
    steps_.pop_front();
    return step;
  }
  void interrupt() override {
    const std::lock_guard lock(mutex_);
    interrupted_ = true;
    changed_.notify_all();
  }
  [[nodiscard]] std::string name() const override { return "a script"; }

 private:
  std::mutex mutex_;
  std::condition_variable changed_;
  std::deque<Step> steps_;
  bool interrupted_ = false;
  bool waiting_ = false;
};

}  // namespace rackside::tests
