#pragma once
// Reed-Solomon check codewords as QR symbols have them: ISO/IEC 18004:2015, 7.5.2.

#include <cstdint>
#include <vector>

namespace rackside {

/// `data` and behind it its `count` check codewords.
[[nodiscard]] std::vector<std::uint8_t> with_check_codewords(std::vector<std::uint8_t> data,
                                                             int count);

}  // namespace rackside
