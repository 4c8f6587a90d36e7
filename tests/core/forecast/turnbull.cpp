#include "tests/core/forecast/turnbull.hpp"

#include <algorithm>
#include <cmath>

namespace rackside::tests {
namespace {

// Where a low bound is followed by a high one, with nothing between: only there can mass be.
std::vector<Turnbull::Mass> places(const std::vector<Bounds>& times) {
  struct Bound {
    double at;
    int kind;  // in order at one time: a high bound, a low one, the high one of a known time
  };
  std::vector<Bound> bounds;
  for (const Bounds& time : times) {
    const bool known = time.low == time.high;
    bounds.push_back({time.low, 1});
    bounds.push_back({time.high, known ? 2 : 0});
  }
  std::ranges::sort(bounds, [](const Bound& a, const Bound& b) {
    return a.at < b.at || (a.at == b.at && a.kind < b.kind);
  });
  std::vector<Turnbull::Mass> masses;
  for (std::size_t i = 0; i + 1 < bounds.size(); ++i)
    if (bounds[i].kind == 1 && bounds[i + 1].kind != 1)
      masses.push_back({bounds[i].at, bounds[i + 1].at, 0});
  return masses;
}

bool holds(const Bounds& time, const Turnbull::Mass& mass) {
  if (time.low == time.high) return mass.low == time.low && mass.high == time.high;
  const bool known = mass.low == mass.high;  // (low, high] does not hold its low end
  return (known ? mass.low > time.low : mass.low >= time.low) && mass.high <= time.high;
}

}  // namespace

Turnbull::Turnbull(const std::vector<Bounds>& times) : masses_(places(times)) {
  constexpr int rounds = 20'000;
  for (Mass& mass : masses_) mass.share = 1.0 / static_cast<double>(masses_.size());
  for (int round = 0; round < rounds; ++round) {
    std::vector<double> next(masses_.size(), 0);
    log_likelihood_ = 0;
    for (const Bounds& time : times) {
      double sum = 0;
      for (const Mass& mass : masses_)
        if (holds(time, mass)) sum += mass.share;
      for (std::size_t i = 0; i < masses_.size(); ++i)
        if (holds(time, masses_[i])) next[i] += masses_[i].share / sum;
      log_likelihood_ += std::log(sum);
    }
    double moved = 0;
    for (std::size_t i = 0; i < masses_.size(); ++i) {
      const double share = next[i] / static_cast<double>(times.size());
      moved = std::max(moved, std::abs(share - masses_[i].share));
      masses_[i].share = share;
    }
    if (moved < 1e-10) break;
  }
}

double Turnbull::survival(double time) const {
  double sum = 0;
  for (const Mass& mass : masses_)
    if (mass.low >= time && mass.high > time) sum += mass.share;
  return sum;
}

}  // namespace rackside::tests
