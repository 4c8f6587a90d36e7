#pragma once
// The normal distribution where it is cut off: the mass between two points and the moments of what
// lies between them. Everything that is interval-censored in this room comes through here.

namespace rackside {

[[nodiscard]] double normal_density(double z);
[[nodiscard]] double normal_cdf(double z);
/// P(low < Z < high) without the loss of digits in the tails.
[[nodiscard]] double normal_mass(double low, double high);

struct Truncated {
  double mass = 0;      // that fell between the bounds
  double mean = 0;      // of what did
  double variance = 0;  // of what did
};

/// N(mean, deviation squared) between `low` and `high`, either of which may be infinite. Bounds
/// that hold no mass a double can tell give the nearer bound with variance 0. Bounds closer than
/// 0.03 deviations are taken for the density at their middle (relative error of the mass below 6e-4
/// within 4 deviations of the mean), closer than 0.7 by quadrature (2e-4).
[[nodiscard]] Truncated truncate_normal(double mean, double deviation, double low, double high);

}  // namespace rackside
