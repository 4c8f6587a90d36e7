#include "kiosk/frames/test_pattern.hpp"

#include <algorithm>

namespace rackside {
namespace {

constexpr std::chrono::milliseconds interval{100};
constexpr int bar_width = 16, bar_step = 8;  // px

}  // namespace

Result<std::optional<GreyImage>> TestPattern::next(std::chrono::milliseconds patience) {
  if (bell_.wait(-1, std::min(patience, interval)) == Woken::Rung || patience < interval)
    return std::nullopt;
  GreyImage image{width_, height_, {}};
  image.pixels.reserve(static_cast<std::size_t>(width_) * static_cast<std::size_t>(height_));
  const int bar = number_++ * bar_step % width_;
  for (int y = 0; y < height_; ++y)
    for (int x = 0; x < width_; ++x) {
      const bool on_bar = x >= bar && x < bar + bar_width;
      image.pixels.push_back(on_bar ? 255 : static_cast<std::uint8_t>(x * 255 / width_));
    }
  return image;
}

}  // namespace rackside
