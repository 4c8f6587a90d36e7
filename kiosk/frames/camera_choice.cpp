#include <algorithm>
#include <filesystem>

#include "kiosk/frames/camera_source.hpp"

namespace rackside {

std::vector<CameraChoice> plugged_in_cameras() {
  constexpr std::string_view first_stream = "-video-index0";  // the others carry no picture
  std::vector<CameraChoice> list;
  std::error_code error;
  for (const auto& entry : std::filesystem::directory_iterator("/dev/v4l/by-id", error)) {
    std::string label = entry.path().filename().string();
    if (!label.ends_with(first_stream)) continue;
    label.resize(label.size() - first_stream.size());
    if (label.starts_with("usb-")) label.erase(0, 4);
    std::ranges::replace(label, '_', ' ');
    list.push_back({entry.path().string(), label});
  }
  std::ranges::sort(list, {}, &CameraChoice::path);
  return list;
}

}  // namespace rackside
