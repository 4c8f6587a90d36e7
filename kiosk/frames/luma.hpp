#pragma once
// Grey out of a camera's pixel formats: the luma that is in all of them.

#include <cstdint>
#include <optional>
#include <span>

#include "labels/reader/grey_image.hpp"

namespace rackside {

struct FrameFormat {
  std::uint32_t pixel_format = 0;  // V4L2_PIX_FMT_...
  int width = 0;
  int height = 0;
  int bytes_per_line = 0;  // of the luma plane
  bool operator==(const FrameFormat&) const = default;
};

/// Whether luma can be taken from this format without knowing more.
[[nodiscard]] bool has_luma(std::uint32_t pixel_format);
/// The bytes a whole frame's luma reaches into.
[[nodiscard]] std::size_t luma_bytes(const FrameFormat& format);
/// None when the bytes are fewer than a whole frame: it was torn.
[[nodiscard]] std::optional<GreyImage> luma_of(const FrameFormat& format,
                                               std::span<const std::uint8_t> bytes);

}  // namespace rackside
