#pragma once
// One kiosk a log. Two screens on one log would each show what the other does not know of; other
// programs (export, labels) do not take the lock and work beside the kiosk.

#include <filesystem>

#include "core/values/result.hpp"

namespace rackside {

/// Held until it is destroyed or the process ends, however it ends: a crash leaves nothing behind
/// that somebody would have to clean up.
class KioskLock {
 public:
  /// Locks the log at `log` through the file beside it, `log` with ".lock" at its end, which may
  /// stay there. Errors: Busy when another kiosk has it, ReadOnly, NotFound when there is no
  /// folder.
  [[nodiscard]] static Result<KioskLock> take(const std::filesystem::path& log);

  ~KioskLock();
  KioskLock(KioskLock&& other) noexcept;
  KioskLock& operator=(KioskLock&& other) noexcept;

 private:
  explicit KioskLock(int file) : file_(file) {}
  int file_ = -1;
};

}  // namespace rackside
