#pragma once
// Sleeping on a bare console. There SDL cannot sleep until something is touched: it looks a
// thousand times a second (SDL 2.26, SDL_WaitEventTimeout without a driver's own wait). This waits
// for the same devices that SDL has open, and for the kernel's news of devices that come and go.

#include <chrono>
#include <filesystem>
#include <optional>
#include <vector>

#include "kiosk/frames/doorbell.hpp"

namespace rackside::kiosk {

/// The descriptors in a process's folder of open files that belong to input devices, or on which
/// the kernel or udev tells of devices (netlink).
[[nodiscard]] std::vector<int> input_descriptors(
    const std::filesystem::path& open_files = "/proc/self/fd");

class InputWait {
 public:
  /// Ends the waiting `wait`, or else the next one. From any thread.
  void ring() { bell_.ring(); }
  /// Until an input device has something to say, one comes or goes, the bell rings, or `patience`
  /// has run out (none: for ever).
  void wait(std::optional<std::chrono::milliseconds> patience);

 private:
  Doorbell bell_;
};

}  // namespace rackside::kiosk
