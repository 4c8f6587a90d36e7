#include "kiosk/frames/v4l_calls.hpp"

#include <fcntl.h>
#include <libv4l2.h>
#include <sys/mman.h>

namespace rackside {

V4lCalls libv4l_calls() {
  return {
      .open =
          [](const std::string& path) {
            return v4l2_open(path.c_str(), O_RDWR | O_NONBLOCK | O_CLOEXEC);
          },
      .close = [](int fd) { v4l2_close(fd); },
      .ioctl = [](int fd, unsigned long request,
                  void* argument) { return v4l2_ioctl(fd, request, argument); },
      .map =
          [](std::size_t length, int fd, long offset) {
            return v4l2_mmap(nullptr, length, PROT_READ | PROT_WRITE, MAP_SHARED, fd, offset);
          },
      .unmap = [](void* start, std::size_t length) { v4l2_munmap(start, length); },
  };
}

}  // namespace rackside
