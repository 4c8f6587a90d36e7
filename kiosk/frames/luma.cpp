#include "kiosk/frames/luma.hpp"

#include <linux/videodev2.h>

namespace rackside {
namespace {

struct Packing {
  int step;    // bytes from luma to luma
  int offset;  // of the first
};

std::optional<Packing> packing_of(std::uint32_t pixel_format) {
  switch (pixel_format) {
    case V4L2_PIX_FMT_GREY:
    case V4L2_PIX_FMT_NV12:
    case V4L2_PIX_FMT_NV21:
    case V4L2_PIX_FMT_YUV420:
    case V4L2_PIX_FMT_YVU420: return Packing{1, 0};
    case V4L2_PIX_FMT_YUYV:
    case V4L2_PIX_FMT_YVYU: return Packing{2, 0};
    case V4L2_PIX_FMT_UYVY:
    case V4L2_PIX_FMT_VYUY: return Packing{2, 1};
    default: return std::nullopt;
  }
}

}  // namespace

bool has_luma(std::uint32_t pixel_format) { return packing_of(pixel_format).has_value(); }

std::size_t luma_bytes(const FrameFormat& format) {
  return static_cast<std::size_t>(format.bytes_per_line) * static_cast<std::size_t>(format.height);
}

std::optional<GreyImage> luma_of(const FrameFormat& format, std::span<const std::uint8_t> bytes) {
  const auto packing = packing_of(format.pixel_format);
  if (!packing || bytes.size() < luma_bytes(format) ||
      format.bytes_per_line < format.width * packing->step)
    return std::nullopt;
  GreyImage image{format.width, format.height, {}};
  image.pixels.reserve(static_cast<std::size_t>(format.width) *
                       static_cast<std::size_t>(format.height));
  for (int y = 0; y < format.height; ++y) {
    const std::uint8_t* line =
        bytes.data() + static_cast<std::ptrdiff_t>(y) * format.bytes_per_line;
    if (packing->step == 1)
      image.pixels.insert(image.pixels.end(), line, line + format.width);
    else
      for (int x = 0; x < format.width; ++x)
        image.pixels.push_back(line[x * packing->step + packing->offset]);
  }
  return image;
}

}  // namespace rackside
