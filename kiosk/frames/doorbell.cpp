#include "kiosk/frames/doorbell.hpp"

#include <poll.h>
#include <sys/eventfd.h>
#include <unistd.h>

#include <cstdint>
#include <utility>

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
  pollfd waiting[2] = {{bell_.get(), POLLIN, 0}, {fd, POLLIN, 0}};
  const int ready = ::poll(waiting, fd >= 0 ? 2 : 1, static_cast<int>(patience.count()));
  if (waiting[0].revents != 0) {
    std::uint64_t rings = 0;
    [[maybe_unused]] const auto heard = ::read(bell_.get(), &rings, sizeof rings);
    return Woken::Rung;
  }
  return ready > 0 ? Woken::Ready : Woken::TimedOut;
}

}  // namespace rackside
