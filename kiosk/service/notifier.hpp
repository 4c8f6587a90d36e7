#pragma once
// Tells the service manager how the kiosk is. Source: sd_notify(3) and sd_watchdog_enabled(3) of
// systemd 252, which promise that the protocol stays: lines of KEY=VALUE in one datagram to the
// socket that $NOTIFY_SOCKET names. That is thirty lines; a library for it would be one more
// thing to install and to keep.

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace rackside::kiosk {

/// What the service manager asked for when it started this program.
struct ServiceWish {
  std::string socket;  // where it listens; empty: nobody does
  /// It ends the program after this long without a sign of life; none: never.
  std::optional<std::chrono::milliseconds> watchdog;
  bool operator==(const ServiceWish&) const = default;
};

/// From $NOTIFY_SOCKET, $WATCHDOG_USEC and $WATCHDOG_PID.
[[nodiscard]] ServiceWish service_wish();

class Notifier {
 public:
  explicit Notifier(std::string socket) : socket_(std::move(socket)) {}

  void ready() const { send("READY=1"); }
  void alive() const { send("WATCHDOG=1"); }
  void stopping() const { send("STOPPING=1"); }

 private:
  /// A manager that does not listen is no reason to stop a keeper's work: nothing is reported.
  void send(std::string_view line) const;

  std::string socket_;
};

}  // namespace rackside::kiosk
