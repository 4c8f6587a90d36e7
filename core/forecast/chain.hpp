#pragma once
// The forward-backward pass over a chain of hidden phases whose chances to move differ from one
// observation to the next (Rabiner 1989). A phase that lasts as long as its own law has it goes in
// with its age: the chances to move are then the hazards of the law.

#include <array>
#include <cmath>
#include <span>
#include <vector>

namespace rackside {

template <std::size_t N>
struct Chain {
  using Phases = std::array<double, N>;

  /// One observation: the chances [from][to] to move since the one before, and how likely what was
  /// seen is in each phase.
  struct Step {
    std::array<Phases, N> moves{};
    Phases seen{};
  };

  /// By step. The phase at step k, given all, is as `predicted[k]` times `ahead[k]`.
  struct Pass {
    std::vector<Phases> before;     // at the step before, given all until then
    std::vector<Phases> predicted;  // at this step, given the same
    std::vector<Phases> ahead;      // how likely all from this step on is; sums to 1
    double log_likelihood = 0;      // of everything, the end with it
  };

  /// `end`: how likely the end is out of each phase; all 1 where nothing is known of it.
  static Pass run(const Phases& start, std::span<const Step> steps, const Phases& end) {
    Pass pass;
    Phases now = start;
    for (const Step& step : steps) {
      pass.before.push_back(now);
      pass.predicted.push_back(moved(now, step));
      now = times(pass.predicted.back(), step.seen);
      pass.log_likelihood += std::log(normalise(now));
    }
    Phases last = times(now, end);
    pass.log_likelihood += std::log(normalise(last));
    look_back(pass, steps, end);
    return pass;
  }

  static Phases times(Phases values, const Phases& factors) {
    for (std::size_t i = 0; i < N; ++i) values[i] *= factors[i];
    return values;
  }
  /// Makes them sum to 1 and returns what they summed to.
  static double normalise(Phases& values) {
    double sum = 0;
    for (const double value : values) sum += value;
    for (double& value : values) value /= sum;
    return sum;
  }

 private:
  static Phases moved(const Phases& from, const Step& step) {
    Phases to{};
    for (std::size_t i = 0; i < N; ++i)
      for (std::size_t j = 0; j < N; ++j) to[j] += from[i] * step.moves[i][j];
    return to;
  }
  static void look_back(Pass& pass, std::span<const Step> steps, Phases after) {
    pass.ahead.resize(steps.size());
    for (std::size_t k = steps.size(); k-- > 0;) {
      Phases& ahead = pass.ahead[k] = times(steps[k].seen, after);
      normalise(ahead);
      after.fill(0);
      for (std::size_t i = 0; i < N; ++i)
        for (std::size_t j = 0; j < N; ++j) after[i] += steps[k].moves[i][j] * ahead[j];
    }
  }
};

}  // namespace rackside
