#pragma once
// One symbol seen in a picture.

#include "core/code/code.hpp"
#include "labels/reader/geometry.hpp"
#include "labels/reader/grey_image.hpp"

namespace rackside {

/// One symbol that was decoded. `code` holds an error for content that is not ours or whose check
/// character does not fit; its content is then dropped, never passed on.
struct Sighting {
  Result<Code> code;
  Quadrilateral corners;

  [[nodiscard]] Point centre() const { return middle_of(corners); }
};

}  // namespace rackside
