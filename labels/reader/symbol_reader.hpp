#pragma once
// Finds our codes in a picture. The kiosk's camera, the proof of printed labels and the command
// `rackside-labels read` all read through this.

#include <array>
#include <string>
#include <vector>

#include "core/code/code.hpp"
#include "labels/reader/geometry.hpp"
#include "labels/reader/grey_image.hpp"

namespace rackside {

/// One symbol that was decoded. `code` holds an error for content that is not ours or whose check
/// character does not fit; its content is then dropped, never passed on.
struct Sighting {
  Result<Code> code;
  std::array<Point, 4> corners;  // clockwise from the symbol's own top left

  [[nodiscard]] Point centre() const;
};

/// All symbols that one plain pass over `image` decodes, nearest to the middle first. Never throws:
/// a symbol that makes the library fail is as good as not there.
[[nodiscard]] std::vector<Sighting> read_symbols(const GreyImage& image);

}  // namespace rackside
