#include "core/file/save_file.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>

namespace rackside {
namespace {

tl::unexpected<Error> refused(int problem, const std::string& path) {
  const auto say = [&](ErrorKind kind, std::string_view why) {
    return failure(kind, fmt::format("\"{}\" was not written: {}", path, why), path);
  };
  switch (problem) {
    case ENOSPC:
    case EDQUOT: return say(ErrorKind::Full, "there is no room left. Make room and try again.");
    case EACCES:
    case EPERM:
    case EROFS: return say(ErrorKind::ReadOnly, "this folder cannot be written to.");
    case ENOENT:
    case ENOTDIR: return say(ErrorKind::NotFound, "there is no such folder.");
    case EISDIR: return say(ErrorKind::BadInput, "this is a folder.");
    default: return say(ErrorKind::Broken, std::strerror(problem));
  }
}

// 0 or what went wrong.
int write_all(int file, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t written = ::write(file, bytes.data(), bytes.size());
    if (written < 0 && errno == EINTR) continue;
    if (written < 0) return errno;
    bytes.remove_prefix(static_cast<std::size_t>(written));
  }
  return 0;
}

int write_and_close(int file, std::string_view bytes, bool to_disk) {
  int problem = write_all(file, bytes);
  if (problem == 0 && to_disk && ::fsync(file) != 0) problem = errno;
  if (::close(file) != 0 && problem == 0) problem = errno;
  return problem;
}

bool is_device(const std::string& path) {
  struct stat found {};
  return ::stat(path.c_str(), &found) == 0 && !S_ISREG(found.st_mode) && !S_ISDIR(found.st_mode);
}

Result<void> write_device(const std::string& path, std::string_view bytes) {
  const int file = ::open(path.c_str(), O_WRONLY | O_CLOEXEC);
  if (file < 0) return refused(errno, path);
  if (const int problem = write_and_close(file, bytes, false)) return refused(problem, path);
  return {};
}

}  // namespace

Result<void> save_file(const std::string& path, std::string_view bytes, Readers readers) {
  if (is_device(path)) return write_device(path, bytes);
  const std::string beside = fmt::format("{}.part{}", path, ::getpid());
  const mode_t mode = readers == Readers::OwnerOnly ? 0600 : 0644;
  const int file = ::open(beside.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, mode);
  if (file < 0) return refused(errno, path);
  int problem = write_and_close(file, bytes, true);
  if (problem == 0 && std::rename(beside.c_str(), path.c_str()) != 0) problem = errno;
  if (problem == 0) return {};
  ::unlink(beside.c_str());
  return refused(problem, path);
}

}  // namespace rackside
