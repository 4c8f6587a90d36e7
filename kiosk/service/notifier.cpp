#include "kiosk/service/notifier.hpp"

#include <sys/socket.h>
#include <sys/un.h>
#include <unistd.h>

#include <charconv>
#include <cstddef>
#include <cstdlib>

#include "kiosk/frames/doorbell.hpp"

namespace rackside::kiosk {
namespace {

std::string variable(const char* name) {
  const char* value = std::getenv(name);
  return value == nullptr ? std::string{} : value;
}

std::optional<std::int64_t> number(const std::string& text) {
  std::int64_t value = 0;
  const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (problem != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  return value;
}

}  // namespace

ServiceWish service_wish() {
  ServiceWish wish{variable("NOTIFY_SOCKET"), {}};
  // The variables are inherited: a watchdog that is meant for another process is not ours.
  const auto process = number(variable("WATCHDOG_PID"));
  const bool ours = !process || *process == getpid();
  const auto microseconds = number(variable("WATCHDOG_USEC"));
  if (ours && microseconds && *microseconds >= 1000)
    wish.watchdog = std::chrono::milliseconds{*microseconds / 1000};
  return wish;
}

void Notifier::send(std::string_view line) const {
  sockaddr_un address{};
  if (socket_.empty() || socket_.size() >= sizeof address.sun_path) return;
  address.sun_family = AF_UNIX;
  socket_.copy(address.sun_path, socket_.size());
  // A name that begins with @ is one in the abstract namespace, which begins with a zero.
  if (socket_[0] == '@') address.sun_path[0] = '\0';
  const Descriptor channel(socket(AF_UNIX, SOCK_DGRAM | SOCK_CLOEXEC | SOCK_NONBLOCK, 0));
  const auto size = static_cast<socklen_t>(offsetof(sockaddr_un, sun_path) + socket_.size());
  [[maybe_unused]] const auto sent = sendto(channel.get(), line.data(), line.size(), MSG_NOSIGNAL,
                                            reinterpret_cast<const sockaddr*>(&address), size);
}

}  // namespace rackside::kiosk
