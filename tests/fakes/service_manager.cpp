#include "tests/fakes/service_manager.hpp"

#include <poll.h>
#include <sys/socket.h>
#include <sys/un.h>

#include <array>
#include <cstddef>

namespace rackside::tests {

ServiceManager::ServiceManager(const std::string& address)
    : ear_(socket(AF_UNIX, SOCK_DGRAM | SOCK_CLOEXEC, 0)) {
  sockaddr_un name{};
  name.sun_family = AF_UNIX;
  address.copy(name.sun_path, sizeof name.sun_path - 1);
  if (address.front() == '@') name.sun_path[0] = '\0';
  const auto size = static_cast<socklen_t>(offsetof(sockaddr_un, sun_path) + address.size());
  [[maybe_unused]] const int bound =
      bind(ear_.get(), reinterpret_cast<const sockaddr*>(&name), size);
}

std::string ServiceManager::next(std::chrono::milliseconds patience) {
  pollfd waiting{ear_.get(), POLLIN, 0};
  if (poll(&waiting, 1, static_cast<int>(patience.count())) != 1) return {};
  std::array<char, 256> line{};
  const auto size = recv(ear_.get(), line.data(), line.size(), 0);
  return size > 0 ? std::string(line.data(), static_cast<std::size_t>(size)) : std::string{};
}

}  // namespace rackside::tests
