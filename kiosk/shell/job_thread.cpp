#include "kiosk/shell/job_thread.hpp"

namespace rackside::kiosk {

void JobThread::finish() {
  {
    const std::lock_guard lock(mutex_);
    closing_ = true;
  }
  changed_.notify_one();
  if (thread_.joinable()) thread_.join();
}

void JobThread::add(Job job) {
  {
    const std::lock_guard lock(mutex_);
    if (closing_) return;
    jobs_.push_back(std::move(job));
  }
  changed_.notify_one();
}

void JobThread::run() {
  for (;;) {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [this] { return closing_ || !jobs_.empty(); });
    if (jobs_.empty()) return;
    Job job = std::move(jobs_.front());
    jobs_.pop_front();
    lock.unlock();
    job();
  }
}

}  // namespace rackside::kiosk
