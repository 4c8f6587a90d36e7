#include "kiosk/frames/chosen_source.hpp"

#include "kiosk/frames/camera_choice.hpp"
#include "kiosk/frames/camera_source.hpp"
#include "kiosk/frames/test_pattern.hpp"

namespace rackside {

std::unique_ptr<FrameSource> source_at(const std::string& path) {
  if (path.empty()) return nullptr;
  if (path == test_pattern_path) return std::make_unique<TestPattern>(640, 480);
  return std::make_unique<CameraSource>(CameraWish{.path = path});
}

}  // namespace rackside
