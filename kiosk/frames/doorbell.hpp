#pragma once
// Waiting for a file descriptor in a way that another thread can end.

#include <chrono>

namespace rackside {

/// Owns a file descriptor; -1 owns nothing.
class Descriptor {
 public:
  explicit Descriptor(int fd = -1) : fd_(fd) {}
  ~Descriptor();
  Descriptor(Descriptor&& other) noexcept : fd_(other.fd_) { other.fd_ = -1; }
  Descriptor& operator=(Descriptor&& other) noexcept;
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;

  [[nodiscard]] int get() const { return fd_; }
  [[nodiscard]] bool open() const { return fd_ >= 0; }

 private:
  int fd_;
};

enum class Woken { Ready, Rung, TimedOut };

class Doorbell {
 public:
  Doorbell();
  /// Ends the waiting `wait`, or else the next one. From any thread.
  void ring();
  /// Until `fd` can be read (-1: only the bell), the bell rings, or `patience` has run out.
  [[nodiscard]] Woken wait(int fd, std::chrono::milliseconds patience);

 private:
  Descriptor bell_;
};

}  // namespace rackside
