#pragma once
// A small linear filter, learned from examples.

#include <array>
#include <cstddef>
#include <vector>

namespace rackside {

/// Half modules from a module's middle.
struct Tap {
  int x, y;
};

/// All within one module, and whole modules at a distance of two.
inline constexpr std::size_t tap_count = 25 + 16;
[[nodiscard]] const std::vector<Tap>& filter_taps();

/// The picture at each tap, and a constant 1.
using Features = std::array<double, tap_count + 1>;

struct Example {
  Features features;
  double target;
};

/// The weights that answer the examples best (least squares), pulled towards taking the middle
/// alone the more, the fewer examples there are.
[[nodiscard]] Features learned_filter(const std::vector<Example>& examples);
[[nodiscard]] double answer(const Features& weights, const Features& features);

}  // namespace rackside
