#pragma once
// The part of a cycle before premoult: hardening, then feeding with its fasts.

#include <span>
#include <vector>

#include "core/forecast/steps.hpp"

namespace rackside {

/// Where a cycle starts: at a moult, or somewhere unknown in it when the animal came here.
struct CycleStart {
  double day = 0;
  bool arrival = false;
  double log_length = 0;  // the length to expect; hardening goes with it
};

/// Probability that an animal is still hardening `age` days after a moult.
[[nodiscard]] double still_hard(const LengthLaw& hardening, double log_cycle, double age);

/// A forward pass. `log_likelihood[k]` is that of the first k steps had premoult not begun before
/// the k-th; `hardening` and `fasting` are the chances at `until`, had it not begun by then.
class Opening {
 public:
  void run(std::span<const Step> steps, const CycleStart& start, double until,
           const Habits& habits);

  [[nodiscard]] const std::vector<double>& log_likelihood() const { return log_likelihood_; }
  [[nodiscard]] double hardening() const { return hardening_; }
  [[nodiscard]] double fasting() const { return fasting_; }

 private:
  void soften(double age, const Habits& habits, double log_cycle);
  void drift(const Change& change);

  std::vector<double> log_likelihood_;
  double hardening_ = 0, feeding_ = 0, fasting_ = 0;
  double hard_before_ = 1;  // still_hard at the step before
};

}  // namespace rackside
