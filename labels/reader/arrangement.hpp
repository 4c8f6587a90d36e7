#pragma once
// Which finder marks may belong to one symbol, and how that symbol would lie in the picture.

#include <array>
#include <vector>

#include "labels/reader/finder_search.hpp"
#include "labels/reader/time_left.hpp"
#include "labels/reader/warp.hpp"
#include "labels/symbol/symbol_layout.hpp"

namespace rackside {

struct Arrangement {
  int version = 1;
  WarpShape shape;
  float score = 0;                 // of the grid as first guessed
  std::array<Point, 3> finders{};  // top left, top right, bottom left; one may be a guess
};

/// Every way in which three of `marks` make a symbol whose finder patterns have the size the
/// marks have, judged on `plane`, best first. `focal` in pixels.
[[nodiscard]] std::vector<Arrangement> arrangements_of_three(const Plane& plane,
                                                             const std::vector<FinderMark>& marks,
                                                             double focal,
                                                             const TimeLeft& time_left);

/// The same of two marks, when the third is hidden by glare or dirt.
[[nodiscard]] std::vector<Arrangement> arrangements_of_two(const Plane& plane,
                                                           const std::vector<FinderMark>& marks,
                                                           double focal, const TimeLeft& time_left);

}  // namespace rackside
