#pragma once
// A thread that does one job after another.

#include <condition_variable>
#include <deque>
#include <functional>
#include <mutex>
#include <thread>

namespace rackside::kiosk {

class JobThread {
 public:
  using Job = std::function<void()>;

  JobThread() : thread_([this] { run(); }) {}
  ~JobThread() { finish(); }
  JobThread(const JobThread&) = delete;
  JobThread& operator=(const JobThread&) = delete;

  /// From any thread. After `finish` has begun, jobs are no longer taken.
  void add(Job job);
  /// Does the jobs that were handed in, so that nothing that was tapped is dropped, and ends.
  void finish();

 private:
  void run();

  std::mutex mutex_;
  std::condition_variable changed_;
  std::deque<Job> jobs_;
  bool closing_ = false;
  std::thread thread_;
};

}  // namespace rackside::kiosk
