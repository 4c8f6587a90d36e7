#include "kiosk/frames/camera_source.hpp"

#include <linux/videodev2.h>
#include <sys/mman.h>

#include <cerrno>
#include <cstring>
#include <utility>

namespace rackside {
namespace {

constexpr std::uint32_t buffer_count = 3;
constexpr int most_lost = 30;  // frames in a row; then the camera is started anew

v4l2_buffer buffer_number(std::uint32_t index) {
  v4l2_buffer buffer{};
  buffer.type = V4L2_BUF_TYPE_VIDEO_CAPTURE;
  buffer.memory = V4L2_MEMORY_MMAP;
  buffer.index = index;
  return buffer;
}

}  // namespace

CameraSource::CameraSource(CameraWish wish, V4lCalls calls)
    : wish_(std::move(wish)), calls_(std::move(calls)), name_(wish_.path) {}

CameraSource::~CameraSource() { stop(); }

Result<std::optional<GreyImage>> CameraSource::next(std::chrono::milliseconds patience) {
  if (fd_ < 0)
    if (const auto started = start(); !started) return tl::unexpected(started.error());
  if (bell_.wait(fd_, patience) != Woken::Ready) return std::nullopt;
  GreyImage latest;
  switch (drain(latest)) {
    case Drained::Frame: return latest;
    case Drained::Nothing: return std::nullopt;
    case Drained::FormatChanged: stop(); return std::nullopt;
    case Drained::Gone: break;
  }
  return gone();
}

Result<void> CameraSource::start() {
  if (!open_device()) return gone();
  if (!agree_on_format()) {
    stop();
    return failure(ErrorKind::Broken, "This camera gives no picture that can be used here.",
                   wish_.path);
  }
  v4l2_streamparm speed{};
  speed.type = V4L2_BUF_TYPE_VIDEO_CAPTURE;
  speed.parm.capture.timeperframe = {1, static_cast<std::uint32_t>(wish_.frames_per_second)};
  static_cast<void>(call(VIDIOC_S_PARM, &speed));  // a wish; many cameras know one speed only
  int type = V4L2_BUF_TYPE_VIDEO_CAPTURE;
  if (!map_buffers() || !call(VIDIOC_STREAMON, &type)) return gone();
  return {};
}

bool CameraSource::open_device() {
  fd_ = calls_.open(wish_.path);
  if (fd_ < 0) return false;
  v4l2_capability capability{};
  if (!call(VIDIOC_QUERYCAP, &capability)) return false;
  const auto* card = reinterpret_cast<const char*>(capability.card);
  name_.assign(card, strnlen(card, sizeof capability.card));
  return (capability.capabilities & V4L2_CAP_STREAMING) != 0;
}

// What has its luma in the open is taken as it is; everything else libv4l turns into YUV420.
bool CameraSource::agree_on_format() {
  for (const std::uint32_t pixels : {V4L2_PIX_FMT_GREY, V4L2_PIX_FMT_YUYV, V4L2_PIX_FMT_YUV420}) {
    v4l2_format format{};
    format.type = V4L2_BUF_TYPE_VIDEO_CAPTURE;
    format.fmt.pix.width = static_cast<std::uint32_t>(wish_.width);
    format.fmt.pix.height = static_cast<std::uint32_t>(wish_.height);
    format.fmt.pix.pixelformat = pixels;
    format.fmt.pix.field = V4L2_FIELD_ANY;
    if (!call(VIDIOC_S_FMT, &format) || !has_luma(format.fmt.pix.pixelformat)) continue;
    const auto agreed = current_format();
    if (!agreed) continue;
    format_ = *agreed;
    return true;
  }
  return false;
}

std::optional<FrameFormat> CameraSource::current_format() const {
  v4l2_format format{};
  format.type = V4L2_BUF_TYPE_VIDEO_CAPTURE;
  if (!call(VIDIOC_G_FMT, &format)) return std::nullopt;
  const auto& pix = format.fmt.pix;
  if (!has_luma(pix.pixelformat) || pix.width == 0 || pix.height == 0) return std::nullopt;
  return FrameFormat{pix.pixelformat, static_cast<int>(pix.width), static_cast<int>(pix.height),
                     static_cast<int>(pix.bytesperline)};
}

bool CameraSource::map_buffers() {
  v4l2_requestbuffers request{};
  request.count = buffer_count;
  request.type = V4L2_BUF_TYPE_VIDEO_CAPTURE;
  request.memory = V4L2_MEMORY_MMAP;
  if (!call(VIDIOC_REQBUFS, &request) || request.count == 0) return false;
  for (std::uint32_t index = 0; index < request.count; ++index) {
    v4l2_buffer buffer = buffer_number(index);
    if (!call(VIDIOC_QUERYBUF, &buffer)) return false;
    void* start = calls_.map(buffer.length, fd_, static_cast<long>(buffer.m.offset));
    if (start == MAP_FAILED) return false;
    mappings_.push_back({start, buffer.length});
    if (!call(VIDIOC_QBUF, &buffer)) return false;
  }
  return true;
}

// Takes all frames that wait and keeps the last whole one.
CameraSource::Drained CameraSource::drain(GreyImage& latest) {
  Drained result = Drained::Nothing;
  for (;;) {
    v4l2_buffer buffer = buffer_number(0);
    if (!call(VIDIOC_DQBUF, &buffer)) {
      if (errno == EAGAIN) return result;
      // EIO: one frame was lost on the way; the stream goes on unless it is all that comes.
      if (errno == EIO && ++lost_in_a_row_ < most_lost) continue;
      return Drained::Gone;
    }
    lost_in_a_row_ = 0;
    if (buffer.index >= mappings_.size()) return Drained::Gone;
    const Mapping& mapping = mappings_[buffer.index];
    const std::size_t used = std::min<std::size_t>(buffer.bytesused, mapping.length);
    const bool torn = (buffer.flags & V4L2_BUF_FLAG_ERROR) != 0;
    auto image = torn ? std::nullopt
                      : luma_of(format_, {static_cast<const std::uint8_t*>(mapping.start), used});
    if (!call(VIDIOC_QBUF, &buffer)) return Drained::Gone;
    // Compressed formats arrive here converted: every whole frame has the same number of bytes.
    const bool unusual = std::exchange(usual_bytes_, used) != used;
    if ((unusual || !image) && current_format() != format_) return Drained::FormatChanged;
    if (!image) continue;
    latest = std::move(*image);
    result = Drained::Frame;
  }
}

bool CameraSource::call(unsigned long request, void* argument) const {
  int result;
  do result = calls_.ioctl(fd_, request, argument);
  while (result < 0 && errno == EINTR);
  return result >= 0;
}

tl::unexpected<Error> CameraSource::gone() {
  stop();
  return failure(ErrorKind::Broken,
                 "The camera does not answer. Plug it in again; it is then used at once.",
                 wish_.path);
}

void CameraSource::stop() {
  lost_in_a_row_ = 0;
  for (const Mapping& mapping : mappings_) calls_.unmap(mapping.start, mapping.length);
  mappings_.clear();
  if (fd_ >= 0) calls_.close(fd_);
  fd_ = -1;
}

}  // namespace rackside
