#pragma once
// The few calls through which a camera is spoken to, so that a test can stand in for the kernel.

#include <cstddef>
#include <functional>
#include <string>

namespace rackside {

/// As the functions of libv4l2 of the same names: -1 (or MAP_FAILED) and errno on failure.
struct V4lCalls {
  std::function<int(const std::string& path)> open;  // not blocking
  std::function<void(int fd)> close;
  std::function<int(int fd, unsigned long request, void* argument)> ioctl;
  std::function<void*(std::size_t length, int fd, long offset)> map;
  std::function<void(void* start, std::size_t length)> unmap;
};

/// The real ones: libv4l converts what the camera gives into one of a few formats.
[[nodiscard]] V4lCalls libv4l_calls();

}  // namespace rackside
