#pragma once
// Looks for finder patterns: dark, light, dark, light, dark in the proportions 1:1:3:1:1 along any
// line through the middle, however the label is tilted.

#include <vector>

#include "labels/reader/plane.hpp"

namespace rackside {

struct FinderMark {
  Point middle;
  double across = 0;  // px from edge to edge along the row through the middle
  double down = 0;    // and along the column
  int hits = 1;       // rows in which it was seen, summed over looks
};

/// The finder patterns seen in `plane`, most often seen first. Dark is what is darker than the mean
/// of the pixels up to `reach` away: finders of up to `reach` / 2 px a module are seen.
[[nodiscard]] std::vector<FinderMark> find_finders(const Plane& plane, int reach);

/// Adds the marks of another look at the same place to `marks`; close ones become one.
void unite(std::vector<FinderMark>& marks, const std::vector<FinderMark>& more);

}  // namespace rackside
