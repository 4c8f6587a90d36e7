#pragma once
// The sweeps by which readers are compared: one kind of disturbance at a time, and all together.

#include <string>
#include <vector>

#include "tests/generators/frames.hpp"

namespace rackside::tests {

struct Cell {
  std::string name;
  Scene scene;
};

/// Every cell, in the order of the report; version 1 unless the name says otherwise.
[[nodiscard]] std::vector<Cell> all_cells();

/// The cells where everything comes together: a tub in a hand before a cheap camera.
[[nodiscard]] Scene tub_in_hand(double module_px, int version);

}  // namespace rackside::tests
