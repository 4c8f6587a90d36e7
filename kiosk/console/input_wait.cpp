#include "kiosk/console/input_wait.hpp"

#include <linux/netlink.h>
#include <sys/epoll.h>
#include <sys/socket.h>

#include <charconv>
#include <string>
#include <system_error>
#include <thread>

namespace rackside::kiosk {
namespace {

namespace fs = std::filesystem;
using std::chrono::milliseconds;

bool tells_of_devices(int socket) {
  int family = 0;
  int protocol = 0;
  socklen_t size = sizeof(int);
  if (getsockopt(socket, SOL_SOCKET, SO_DOMAIN, &family, &size) != 0) return false;
  if (getsockopt(socket, SOL_SOCKET, SO_PROTOCOL, &protocol, &size) != 0) return false;
  return family == AF_NETLINK && protocol == NETLINK_KOBJECT_UEVENT;
}

std::optional<int> number(const std::string& name) {
  int value = 0;
  const auto [end, problem] = std::from_chars(name.data(), name.data() + name.size(), value);
  if (problem != std::errc{} || end != name.data() + name.size()) return std::nullopt;
  return value;
}

}  // namespace

std::vector<int> input_descriptors(const fs::path& open_files) {
  std::vector<int> found;
  std::error_code none;
  for (const auto& entry : fs::directory_iterator(open_files, none)) {
    const auto fd = number(entry.path().filename().string());
    const std::string target = fs::read_symlink(entry.path(), none).string();
    if (!fd) continue;
    if (target.starts_with("/dev/input/event") ||
        (target.starts_with("socket:") && tells_of_devices(*fd)))
      found.push_back(*fd);
  }
  return found;
}

void InputWait::wait(std::optional<milliseconds> patience) {
  const Descriptor all(epoll_create1(EPOLL_CLOEXEC));
  for (const int fd : input_descriptors()) {
    epoll_event wanted{.events = EPOLLIN, .data = {}};
    [[maybe_unused]] const int added = epoll_ctl(all.get(), EPOLL_CTL_ADD, fd, &wanted);
  }
  const auto woken = bell_.wait(all.get(), patience.value_or(milliseconds{-1}));
  // A device that was pulled out stays readable until SDL lets go of it: never faster than SDL
  // itself would look.
  if (woken == Woken::Ready) std::this_thread::sleep_for(milliseconds{1});
}

}  // namespace rackside::kiosk
