#pragma once
// ZXing-C++, guarded: it reads what other people's labels hold, in all versions of the symbol.

#include <vector>

#include "labels/reader/sighting.hpp"

namespace rackside {

/// All QR symbols that the library decodes in `image`. Never throws: a symbol that makes the
/// library fail (valid error correction around a bit stream that is cut) is as good as not there.
[[nodiscard]] std::vector<Sighting> library_pass(const GreyImage& image, int most_symbols);

}  // namespace rackside
