#include "kiosk/doorbell/doorbell.hpp"

#include <poll.h>
#include <sys/eventfd.h>
#include <unistd.h>

#include <cstdint>
#include <utility>
#include <vector>

namespace rackside {

Descriptor::~Descriptor() {
  if (fd_ >= 0) ::close(fd_);
}

Descriptor& Descriptor::operator=(Descriptor&& other) noexcept {
  std::swap(fd_, other.fd_);
  return *this;
}

Doorbell::Doorbell() : bell_(::eventfd(0, EFD_CLOEXEC | EFD_NONBLOCK)) {}

void Doorbell::ring() {
  const std::uint64_t one = 1;
  // Full (2^64 rings unheard) cannot happen; nothing else can go wrong.
  [[maybe_unused]] const auto written = ::write(bell_.get(), &one, sizeof one);
}

Woken Doorbell::wait(int fd, std::chrono::milliseconds patience) {
  return wait(std::span(&fd, fd >= 0 ? 1 : 0), patience);
}

Woken Doorbell::wait(std::span<const int> fds, std::chrono::milliseconds patience) {
  std::vector<pollfd> waiting{{bell_.get(), POLLIN, 0}};
  for (const int fd : fds) waiting.push_back({fd, POLLIN, 0});
  const int ready = ::poll(waiting.data(), waiting.size(), static_cast<int>(patience.count()));
  if (waiting[0].revents != 0) {
    std::uint64_t rings = 0;
    [[maybe_unused]] const auto heard = ::read(bell_.get(), &rings, sizeof rings);
    return Woken::Rung;
  }
  return ready > 0 ? Woken::Ready : Woken::TimedOut;
}

}  // namespace rackside
