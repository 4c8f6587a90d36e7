#include "kiosk/camera/frame_change.hpp"

#include <algorithm>
#include <cstdlib>

namespace rackside {
namespace {

constexpr int block = 16;
constexpr int most_noise = 4;  // grey levels of a block's mean; light that flickers stays below

std::vector<int> block_means(const GreyImage& frame) {
  const int columns = frame.width / block, rows = frame.height / block;
  std::vector<int> sums(static_cast<std::size_t>(columns) * static_cast<std::size_t>(rows), 0);
  for (int y = 0; y < rows * block; ++y) {
    const std::uint8_t* line = frame.pixels.data() + static_cast<std::ptrdiff_t>(y) * frame.width;
    int* sum = sums.data() + static_cast<std::ptrdiff_t>(y / block) * columns;
    for (int column = 0; column < columns; ++column, line += block)
      for (int x = 0; x < block; ++x) sum[column] += line[x];
  }
  for (int& sum : sums) sum /= block * block;
  return sums;
}

}  // namespace

bool FrameChange::differs(const GreyImage& frame) {
  std::vector<int> means = block_means(frame);
  const bool same =
      frame.width == width_ && frame.height == height_ &&
      std::ranges::equal(means, means_, [](int a, int b) { return std::abs(a - b) <= most_noise; });
  if (same) return false;
  width_ = frame.width;
  height_ = frame.height;
  means_ = std::move(means);
  return true;
}

}  // namespace rackside
