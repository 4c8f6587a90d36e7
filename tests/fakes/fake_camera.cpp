#include "tests/fakes/fake_camera.hpp"

#include <linux/videodev2.h>
#include <sys/eventfd.h>
#include <sys/mman.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstring>

namespace rackside::tests {
namespace {

constexpr std::size_t buffer_bytes = 1 << 16;

bool luma_first(std::uint32_t format) {
  return format == V4L2_PIX_FMT_YUYV || format == V4L2_PIX_FMT_YVYU;
}
bool luma_second(std::uint32_t format) {
  return format == V4L2_PIX_FMT_UYVY || format == V4L2_PIX_FMT_VYUY;
}
int bytes_a_pixel(std::uint32_t format) {
  return luma_first(format) || luma_second(format) ? 2 : 1;
}

}  // namespace

FakeCamera::FakeCamera(std::vector<std::uint32_t> formats, int width, int height)
    : formats_(std::move(formats)),
      format_{formats_.front(), width, height, width * bytes_a_pixel(formats_.front())},
      wake_(::eventfd(0, EFD_NONBLOCK | EFD_SEMAPHORE)) {}

FakeCamera::~FakeCamera() { ::close(wake_); }

V4lCalls FakeCamera::calls() {
  return {.open = [this](const std::string&) { return plugged_ ? ++opened, wake_ : fail(ENOENT); },
          .close =
              [this](int) {
                streaming_ = false;
                queued_.clear();
              },
          .ioctl = [this](int, unsigned long request,
                          void* argument) { return ioctl(request, argument); },
          .map = [this](std::size_t, int, long offset) -> void* {
            ++mapped;
            return buffers_.at(static_cast<std::size_t>(offset)).data();
          },
          .unmap = [this](void*, std::size_t) { ++unmapped; }};
}

void FakeCamera::show(FakeFrame frame) {
  waiting_.push_back(std::move(frame));
  ring();
}

void FakeCamera::show_grey(std::uint8_t grey) {
  const bool packed = bytes_a_pixel(format_.pixel_format) == 2;
  FakeFrame frame;
  for (int i = 0; i < format_.bytes_per_line * format_.height; ++i) {
    const bool luma = !packed || (i % 2 == 0) == luma_first(format_.pixel_format);
    frame.bytes.push_back(luma ? grey : 77);
  }
  show(std::move(frame));
}

void FakeCamera::unplug() {
  plugged_ = false;
  waiting_.clear();
  ring();
}

void FakeCamera::plug_in() { plugged_ = true; }

void FakeCamera::change_size(int width, int height) {
  format_.width = width;
  format_.height = height;
  format_.bytes_per_line = width * bytes_a_pixel(format_.pixel_format);
}

void FakeCamera::ring() {
  const std::uint64_t one = 1;
  [[maybe_unused]] const auto written = ::write(wake_, &one, sizeof one);
}

int FakeCamera::fail(int error_number) {
  errno = error_number;
  return -1;
}

int FakeCamera::ioctl(unsigned long request, void* argument) {
  if (!plugged_) return fail(ENODEV);
  switch (request) {
    case VIDIOC_QUERYCAP: {
      auto* capability = static_cast<v4l2_capability*>(argument);
      std::memcpy(capability->card, "Shelf Eye", 10);
      capability->capabilities = V4L2_CAP_STREAMING | V4L2_CAP_VIDEO_CAPTURE;
      return 0;
    }
    case VIDIOC_S_FMT: return set_format(argument);
    case VIDIOC_G_FMT: {
      auto& pix = static_cast<v4l2_format*>(argument)->fmt.pix;
      pix.pixelformat = format_.pixel_format;
      pix.width = static_cast<std::uint32_t>(format_.width);
      pix.height = static_cast<std::uint32_t>(format_.height);
      pix.bytesperline = static_cast<std::uint32_t>(format_.bytes_per_line);
      return 0;
    }
    case VIDIOC_S_PARM: return fail(EINVAL);  // as cameras with one speed do
    case VIDIOC_REQBUFS:
      for (auto& buffer : buffers_) buffer.assign(buffer_bytes, 0);
      return 0;
    case VIDIOC_QUERYBUF: {
      auto* buffer = static_cast<v4l2_buffer*>(argument);
      buffer->length = buffer_bytes;
      buffer->m.offset = buffer->index;
      return 0;
    }
    case VIDIOC_QBUF: queued_.push_back(static_cast<v4l2_buffer*>(argument)->index); return 0;
    case VIDIOC_STREAMON: streaming_ = true; return 0;
    case VIDIOC_DQBUF: return give_frame(argument);
    default: return fail(ENOTTY);
  }
}

// As drivers do: an unknown format becomes one that is known, without a word.
int FakeCamera::set_format(void* argument) {
  auto& pix = static_cast<v4l2_format*>(argument)->fmt.pix;
  const bool known = std::ranges::find(formats_, pix.pixelformat) != formats_.end();
  format_.pixel_format = known ? pix.pixelformat : formats_.front();
  change_size(format_.width, format_.height);
  pix.pixelformat = format_.pixel_format;
  return 0;
}

int FakeCamera::give_frame(void* argument) {
  if (!failures_.empty()) {
    const int error_number = failures_.front();
    failures_.pop_front();
    return fail(error_number);
  }
  if (!streaming_ || waiting_.empty() || queued_.empty()) {
    std::uint64_t rings;
    while (::read(wake_, &rings, sizeof rings) > 0) {
    }
    return fail(EAGAIN);
  }
  auto* buffer = static_cast<v4l2_buffer*>(argument);
  buffer->index = queued_.front();
  queued_.pop_front();
  const FakeFrame frame = std::move(waiting_.front());
  waiting_.pop_front();
  std::ranges::copy(frame.bytes, buffers_[buffer->index].begin());
  buffer->bytesused = static_cast<std::uint32_t>(frame.bytes.size());
  buffer->flags = frame.error_flag ? V4L2_BUF_FLAG_ERROR : 0;
  return 0;
}

}  // namespace rackside::tests
