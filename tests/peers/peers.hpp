#pragma once
// Readers to compare with: one plain call each, as their documentation shows it.

#include <set>
#include <string>

#include "labels/reader/grey_image.hpp"

namespace rackside::tests {

/// The texts that ZXing-C++ finds in its default way, one symbol at most.
[[nodiscard]] std::string read_by_zxing(const GreyImage& image);
/// All texts that zbar finds.
[[nodiscard]] std::set<std::string> read_by_zbar(const GreyImage& image);

}  // namespace rackside::tests
