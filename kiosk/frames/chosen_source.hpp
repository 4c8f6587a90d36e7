#pragma once
// From the path that setup keeps to the source itself.

#include <memory>
#include <string>

#include "kiosk/frames/frame_source.hpp"

namespace rackside {

/// A camera, or the test pattern; none for an empty path. A camera that is away is looked for when
/// its pictures are asked for, not here.
[[nodiscard]] std::unique_ptr<FrameSource> source_at(const std::string& path);

}  // namespace rackside
