#pragma once
// Finds codes in a still picture, however long it takes: for the proof of printed labels and for
// pictures from files. A camera's frames go through FrameReader.

#include <vector>

#include "labels/reader/sighting.hpp"

namespace rackside {

/// All symbols in `image` that can be read, nearest to its middle first. Never throws.
[[nodiscard]] std::vector<Sighting> read_symbols(const GreyImage& image);

}  // namespace rackside
