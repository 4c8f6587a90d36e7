#pragma once
// Finds codes in a still picture, however long it takes: in pictures from files, and for the proof
// of printed labels. A camera's frames go through FrameReader.

#include <vector>

#include "labels/reader/sighting.hpp"

namespace rackside {

/// All symbols in `image` that can be read in any way, nearest to its middle first. Never throws.
[[nodiscard]] std::vector<Sighting> read_symbols(const GreyImage& image);

/// Those that one pass of a plain decoder reads, which knows nothing of our codes. A proof asks
/// this: a label should be good enough for any reader, and ours reads from half a symbol.
[[nodiscard]] std::vector<Sighting> read_symbols_plainly(const GreyImage& image);

}  // namespace rackside
