#pragma once
// A law of waiting times that assumes no shape, from times known only between bounds: the reference
// for those that do. Turnbull 1976, J. R. Stat. Soc. B 38:290-295; where each time is known or cut
// off it is Kaplan & Meier's.

#include <vector>

namespace rackside::tests {

/// A time in (low, high]; `high` infinite where it was cut off, `low` equal to `high` where known.
struct Bounds {
  double low = 0, high = 0;
};

class Turnbull {
 public:
  explicit Turnbull(const std::vector<Bounds>& times);

  struct Mass {
    double low = 0, high = 0, share = 0;
  };
  /// Ascending; where in (low, high] the share lies cannot be known.
  [[nodiscard]] const std::vector<Mass>& masses() const { return masses_; }
  [[nodiscard]] double log_likelihood() const { return log_likelihood_; }
  /// The share that lasts longer than `time`, which lies in no mass.
  [[nodiscard]] double survival(double time) const;

 private:
  std::vector<Mass> masses_;
  double log_likelihood_ = 0;
};

}  // namespace rackside::tests
