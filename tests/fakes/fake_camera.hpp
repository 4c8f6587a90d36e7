#pragma once
// A camera behind the libv4l calls, without a kernel: it obeys the ioctls that a capture by mapped
// buffers uses, and can be torn, slow, unplugged and changed by the test.

#include <array>
#include <cstdint>
#include <deque>
#include <memory>
#include <vector>

#include "kiosk/frames/luma.hpp"
#include "kiosk/frames/v4l_calls.hpp"

namespace rackside::tests {

struct FakeFrame {
  std::vector<std::uint8_t> bytes;
  bool error_flag = false;  // the driver marks it as damaged
};

class FakeCamera {
 public:
  /// Formats it gives without conversion; the size it insists on.
  explicit FakeCamera(std::vector<std::uint32_t> formats, int width, int height);
  ~FakeCamera();

  [[nodiscard]] V4lCalls calls();

  void show(FakeFrame frame);
  /// A frame of the present format whose luma is `grey` everywhere.
  void show_grey(std::uint8_t grey);
  void unplug();
  void plug_in();
  /// As some cameras do when another program changes them: the next frames have another size.
  void change_size(int width, int height);
  void fail_once(int error_number) { failures_.push_back(error_number); }

  int opened = 0;  // how often
  int unmapped = 0;
  int mapped = 0;

 private:
  int ioctl(unsigned long request, void* argument);
  int set_format(void* argument);
  int give_frame(void* argument);
  int fail(int error_number);
  void ring();

  std::vector<std::uint32_t> formats_;
  FrameFormat format_;
  int wake_;  // an eventfd: what the source polls
  bool plugged_ = true;
  bool streaming_ = false;
  std::deque<FakeFrame> waiting_;
  std::deque<int> failures_;
  std::deque<std::uint32_t> queued_;
  std::array<std::vector<std::uint8_t>, 8> buffers_;
};

}  // namespace rackside::tests
