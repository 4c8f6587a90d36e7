#pragma once
// All codes in a picture that may be larger, and hold more symbols, than what a camera sees: a
// scanned sheet, a page of a PDF, a photograph.

#include <vector>

#include "labels/reader/grey_image.hpp"
#include "labels/reader/symbol_reader.hpp"

namespace rackside {

struct PageSightings {
  std::vector<Code> codes;  // each once, from top left to bottom right
  int foreign = 0;          // symbols that were read and are not ours
};

/// Reads `page` window by window, and again at half the size and so on, for a window costs the same
/// however large the page is. A page without any code that is easily read is gone over again with
/// all that the kiosk's reader can do.
[[nodiscard]] PageSightings read_page(const GreyImage& page);

}  // namespace rackside
