#pragma once
// Which sources setup can offer, by the path that is kept of the one that was chosen.

#include <string>
#include <string_view>
#include <vector>

namespace rackside {

/// In place of a camera's path: a picture that needs none, to see that pictures arrive and move.
inline constexpr std::string_view test_pattern_path = "test pattern";

/// The cameras that are plugged in, by paths that follow them through replugging.
[[nodiscard]] std::vector<std::string> plugged_in_cameras();

/// What a camera calls itself, as far as its path tells: "Shelf Eye 720p".
[[nodiscard]] std::string camera_label(std::string_view path);

}  // namespace rackside
