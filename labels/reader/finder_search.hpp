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

/// The finder patterns seen in `plane`, most often seen first, at most `most`.
[[nodiscard]] std::vector<FinderMark> find_finders(const Plane& plane, std::size_t most);

/// Adds the marks of another look at the same place to `marks`; close ones become one.
void unite(std::vector<FinderMark>& marks, const std::vector<FinderMark>& more);

}  // namespace rackside
