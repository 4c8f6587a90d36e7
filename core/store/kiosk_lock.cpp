#include "core/store/kiosk_lock.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/file.h>
#include <unistd.h>

#include <cerrno>
#include <utility>

namespace rackside {
namespace {

namespace fs = std::filesystem;

tl::unexpected<Error> no_lock_file(const fs::path& lock, int reason) {
  const std::string folder = lock.parent_path().string();
  if (reason == ENOENT || reason == ENOTDIR)
    return failure(ErrorKind::NotFound,
                   fmt::format("There is no folder {}. Make it first, or name another place for "
                               "the log.",
                               folder),
                   lock.string());
  if (reason == ENOSPC)
    return failure(ErrorKind::Full, "The disk is full. The kiosk was not started.", lock.string());
  return failure(ErrorKind::ReadOnly,
                 fmt::format("The folder {} cannot be written to, so nothing could be recorded. "
                             "The kiosk was not started.",
                             folder),
                 lock.string());
}

// Two ways to write the same path must meet at the same lock.
fs::path lock_of(const fs::path& log) {
  std::error_code unknown;
  fs::path whole = fs::weakly_canonical(fs::absolute(log), unknown);
  if (unknown) whole = fs::absolute(log);
  return whole += ".lock";
}

}  // namespace

Result<KioskLock> KioskLock::take(const fs::path& log) {
  const fs::path lock = lock_of(log);
  // Closed on exec: a printing program that outlives the kiosk must not keep its lock.
  const int file = ::open(lock.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600);
  if (file < 0) return no_lock_file(lock, errno);
  KioskLock taken(file);
  if (flock(file, LOCK_EX | LOCK_NB) != 0)
    return failure(ErrorKind::Busy,
                   fmt::format("Another kiosk is running on the log {}. Close that one first, or "
                               "name another log.",
                               log.string()),
                   lock.string());
  return taken;
}

KioskLock::~KioskLock() {
  if (file_ >= 0) close(file_);
}

KioskLock::KioskLock(KioskLock&& other) noexcept : file_(std::exchange(other.file_, -1)) {}

KioskLock& KioskLock::operator=(KioskLock&& other) noexcept {
  std::swap(file_, other.file_);
  return *this;
}

}  // namespace rackside
