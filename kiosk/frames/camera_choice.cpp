#include "kiosk/frames/camera_choice.hpp"

#include <algorithm>
#include <filesystem>

namespace rackside {
namespace {

constexpr std::string_view first_stream = "-video-index0";  // the others carry no picture

}  // namespace

std::vector<std::string> plugged_in_cameras() {
  std::vector<std::string> list;
  std::error_code error;
  for (const auto& entry : std::filesystem::directory_iterator("/dev/v4l/by-id", error))
    if (entry.path().filename().string().ends_with(first_stream))
      list.push_back(entry.path().string());
  std::ranges::sort(list);
  return list;
}

std::string camera_label(std::string_view path) {
  path.remove_prefix(std::min(path.rfind('/') + 1, path.size()));
  if (path.ends_with(first_stream)) path.remove_suffix(first_stream.size());
  if (path.starts_with("usb-")) path.remove_prefix(4);
  std::string label(path);
  std::ranges::replace(label, '_', ' ');
  return label;
}

}  // namespace rackside
