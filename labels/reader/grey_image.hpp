#pragma once
// A grey picture, one byte a pixel, row by row without gaps; 0 is black.

#include <cstdint>
#include <vector>

namespace rackside {

struct GreyImage {
  int width = 0;
  int height = 0;
  std::vector<std::uint8_t> pixels;  // width * height

  [[nodiscard]] bool empty() const { return pixels.empty(); }
  [[nodiscard]] std::uint8_t at(int x, int y) const {
    return pixels[static_cast<std::size_t>(y) * static_cast<std::size_t>(width) +
                  static_cast<std::size_t>(x)];
  }
  bool operator==(const GreyImage&) const = default;
};

}  // namespace rackside
