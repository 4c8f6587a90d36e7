#pragma once
// From doubtful bits to a code: ordered statistics decoding (Fossorier and Lin, IEEE Transactions
// on Information Theory 41, 1995) over CodeSpace, and a bound on how likely chance alone would
// have done as well. See reading.md.

#include <optional>
#include <vector>

#include "core/code/code.hpp"

namespace rackside {

struct Decoded {
  Code code;
  /// The share of the evidence that speaks against the code: 0 when every bit agrees, 0.5 for
  /// chance.
  double against = 0;
  /// At most this is the probability (as a power of two) that bits drawn by tossing a coin agree
  /// so well with any of our codes.
  double chance_log2 = 0;
};

/// The code that agrees best with `beliefs`: one number a bit in the order of
/// SymbolLayout::bit_places, masks removed, positive for 1, greater for surer. Of all codes those
/// are compared that differ from the surest 44 independent bits in at most `depth` (0 to 3)
/// places. None when a word that is no code agrees better than any code.
[[nodiscard]] std::optional<Decoded> decode_softly(int version, const std::vector<float>& beliefs,
                                                   int depth);

/// The bound of `chance_log2`: Chernoff's, united over all codes.
[[nodiscard]] double chance_log2(const std::vector<float>& strengths, double against);

/// The least surprise that counts as reading: one in 2^40 tries. A frame has at most a hundred.
inline constexpr double accepted_chance_log2 = -40;

}  // namespace rackside
