#pragma once
// Whether a frame shows anything new: a camera before a still shelf must cost nearly nothing.

#include <vector>

#include "labels/reader/grey_image.hpp"

namespace rackside {

/// Compares the means of 16 x 16 pixels, in which a sensor's noise of 10 levels is below one.
class FrameChange {
 public:
  /// Whether `frame` differs from the one last kept by more than noise; if so it is kept.
  [[nodiscard]] bool differs(const GreyImage& frame);

 private:
  int width_ = 0, height_ = 0;
  std::vector<int> means_;
};

}  // namespace rackside
