#pragma once
// Pictures in which no code of ours is to be found: noise, print, other symbologies, other
// people's labels; and our own labels, damaged beyond reading. Small, as an aiming box is after
// cropping, so that a million of them can be had.

#include <optional>

#include "core/code/code.hpp"
#include "labels/reader/grey_image.hpp"
#include "tests/generators/symbols.hpp"

namespace rackside::tests {

enum class Rubbish { Noise, Blocks, Print, Bars, Matrix, ForeignLabel, NearlyOurs, Damaged };
inline constexpr int rubbish_kinds = 8;

struct RubbishPicture {
  GreyImage image;
  std::optional<Code> code;  // of a damaged label: reading it is no mistake
};

inline constexpr int rubbish_side = 170;  // px

/// `side`: of the picture, px. Labels fill most of it, at 2.2 px a module or more.
[[nodiscard]] RubbishPicture rubbish(Rubbish kind, Random& random, int side = rubbish_side);

}  // namespace rackside::tests
