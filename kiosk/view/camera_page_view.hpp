#pragma once
// What setup's camera page says: what the reader sees, which sources there are, where the aim goes.

#include <string>
#include <vector>

#include "kiosk/view/setup_view.hpp"

namespace rackside::kiosk {

struct AimKey {
  std::string word;  // "left", "smaller"
  Intent intent;
  bool operator==(const AimKey&) const = default;
};

struct CameraPageView {
  std::string says;                  // what the reader makes of the picture just now
  std::string trouble;               // why there is no picture; empty: none
  std::vector<SetupChoice> sources;  // none, the test pattern, then the cameras
  std::vector<AimKey> aim_keys;      // three rows of three, as they lie around the middle
  bool operator==(const CameraPageView&) const = default;
};

[[nodiscard]] CameraPageView view_camera(const Model& model);

/// A source in a word or two: "none", "test", "Shelf Eye 720p".
[[nodiscard]] std::string source_word(const std::string& path);

}  // namespace rackside::kiosk
