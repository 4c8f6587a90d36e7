#pragma once
// The observations of the running cycle as log likelihoods that can be read off for any day.

#include "core/forecast/belief.hpp"

namespace rackside {

/// No premoult takes up more than this share of a cycle.
inline constexpr double longest_premoult = 0.75;

class Observed {
 public:
  Observed(const Character& character, const RunningCycle& cycle, double as_of);

  /// How many steps were before `day`.
  [[nodiscard]] std::size_t steps_before(double day) const;
  [[nodiscard]] std::size_t steps() const { return steps_.size(); }
  [[nodiscard]] std::span<const Step> steps_from(std::size_t first) const {
    return steps_.subspan(first);
  }

  /// Of the first k steps in hardening and feeding.
  [[nodiscard]] double feeding(std::size_t k) const { return opening_.log_likelihood()[k]; }
  /// Of the first k steps in premoult; differences are those of the steps between.
  [[nodiscard]] double premoult(std::size_t k) const { return premoult_[k]; }
  /// What a moult on this day makes of the looks at which the animal lay on its back: that is what
  /// lying there means.
  [[nodiscard]] double on_its_back(const MoultCell& moult) const;
  /// The chance that nobody has noticed a moult of this day.
  [[nodiscard]] double unnoticed(double moult) const;

  [[nodiscard]] const Opening& opening() const { return opening_; }

 private:
  const Character& character_;
  const RunningCycle& cycle_;
  std::span<const Step> steps_;
  std::vector<double> premoult_;
  std::vector<std::size_t> steps_by_day_;  // before each day from that of the first step on
  std::vector<double> backs_;              // days on which it lay on its back
  Opening opening_;
};

}  // namespace rackside
