#pragma once
// A picture that needs no camera: to see in setup that pictures arrive and move.

#include "kiosk/frames/doorbell.hpp"
#include "kiosk/frames/frame_source.hpp"

namespace rackside {

/// Ten frames a second: a ramp of greys from left to right, and a bar that wanders over it.
class TestPattern final : public FrameSource {
 public:
  TestPattern(int width, int height) : width_(width), height_(height) {}

  [[nodiscard]] Result<std::optional<GreyImage>> next(std::chrono::milliseconds patience) override;
  void interrupt() override { bell_.ring(); }
  [[nodiscard]] std::string name() const override { return "test pattern"; }

 private:
  int width_, height_;
  int number_ = 0;
  Doorbell bell_;
};

}  // namespace rackside
