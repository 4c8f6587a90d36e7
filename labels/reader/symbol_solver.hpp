#pragma once
// Our own way from a picture to a code: finder patterns, grid, filter, soft decoding.

#include <functional>
#include <optional>
#include <vector>

#include "labels/reader/arrangement.hpp"
#include "labels/reader/soft_decoder.hpp"

namespace rackside {

/// Asked between steps; false ends the search.
using TimeLeft = std::function<bool()>;

struct Solved {
  Code code;
  Quadrilateral corners;  // in the pixels of the plane
  int version;
  double against;
  double chance_log2;
};

[[nodiscard]] std::optional<Solved> solve_symbol(const Plane& plane, double focal,
                                                 const TimeLeft& time_left);

}  // namespace rackside
