#pragma once
// The picture at the modules of a grid that is laid on it.

#include <cstddef>
#include <vector>

#include "labels/reader/plane.hpp"
#include "labels/reader/warp.hpp"

namespace rackside {

/// At `count` by `count` places of `warp`, `step` modules apart, the first at (`first`, `first`)
/// from the symbol's middle; row by row. Nearly all the time of reading is spent here.
[[nodiscard]] std::vector<float> sample_grid(const Plane& plane, const Warp& warp, double first,
                                             double step, int count);

/// The picture at the middle of each module and of one ring of quiet zone around the symbol.
struct ModuleSamples {
  std::size_t stride = 0;
  std::vector<float> value;
  [[nodiscard]] float at(int column, int row) const {
    return value[static_cast<std::size_t>(row + 1) * stride + static_cast<std::size_t>(column + 1)];
  }
};
[[nodiscard]] ModuleSamples sample_modules(const Plane& plane, const Warp& warp, int side);

}  // namespace rackside
