#pragma once
// How large a display is, from the description that it sends of itself (EDID). Source: VESA
// Enhanced EDID Standard, release A revision 2: base block of 128 bytes; size in whole centimetres
// in bytes 21 and 22; the first detailed timing at byte 54 gives it in millimetres in its bytes 12
// to 14.

#include <cstdint>
#include <optional>
#include <span>

namespace rackside::kiosk {

struct DisplaySize {
  double width_mm = 0;
  double height_mm = 0;
  bool operator==(const DisplaySize&) const = default;
};

/// None when the block is damaged or does not tell the size. Where both places tell it and they
/// contradict each other, the centimetres hold: makers of cheap panels leave a proportion such as
/// 160 by 90 in the other (common practice, no source).
[[nodiscard]] std::optional<DisplaySize> display_size(std::span<const std::uint8_t> edid);

/// Pixels to a millimetre of a panel of this size, turned as the picture is. None when no touch
/// panel is like that: a diagonal under 80 or over 1000 mm, fewer than 2 pixels or more than 40, or
/// pixels that are not nearly square.
[[nodiscard]] std::optional<double> plausible_density(int width, int height, DisplaySize size);

}  // namespace rackside::kiosk
