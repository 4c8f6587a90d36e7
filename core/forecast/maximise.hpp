#pragma once
// The top of a smooth function of a few parameters.

#include <functional>
#include <vector>

namespace rackside {

using Objective = std::function<double(const std::vector<double>&)>;

/// Forward differences cost half as much and find the top a little less closely.
enum class Differences { Central, Forward };

struct Ascent {
  int most_steps = 60;
  double tolerance = 1e-7;  // of the objective, at which it stops
  double step = 1e-5;       // of the numeric gradient
  Differences differences = Differences::Central;
};

/// Quasi-Newton (BFGS: Nocedal & Wright 2006, Numerical Optimization, chapter 6) with numeric
/// gradients, from `start`. Never returns a point that is worse than `start`.
[[nodiscard]] std::vector<double> maximise(const Objective& objective, std::vector<double> start,
                                           const Ascent& ascent = {});

/// Second derivative along parameter `index` at `point`, numerically.
[[nodiscard]] double curvature(const Objective& objective, std::vector<double> point,
                               std::size_t index, double step = 1e-2);

}  // namespace rackside
