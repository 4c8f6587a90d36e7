#include "core/forecast/quantiles.hpp"

#include <algorithm>
#include <cmath>

namespace rackside {
namespace {

constexpr double step = 1.0 / (moult_quantiles + 1);
// Two quantiles on the same day would make an upright line.
constexpr double least_gap = 0.25;

double gap(double from, double to) { return std::max(to - from, least_gap); }

}  // namespace

double probability_by(const Forecast& forecast, double day) {
  const auto& q = forecast.next_moult;
  if (day <= q.front()) return std::max(0.0, step * (1 - (q.front() - day) / gap(q[0], q[1])));
  if (day >= q.back())
    return std::min(1.0, 1 - step * (1 - (day - q.back()) / gap(q[moult_quantiles - 2], q.back())));
  const auto above = static_cast<std::size_t>(std::ranges::upper_bound(q, day) - q.begin());
  const double share = (day - q[above - 1]) / gap(q[above - 1], q[above]);
  return step * (static_cast<double>(above) + std::min(share, 1.0));
}

double quantile(const Forecast& forecast, double probability) {
  const auto index = static_cast<std::size_t>(std::lround(probability / step)) - 1;
  return forecast.next_moult[std::min(index, moult_quantiles - 1)];
}

}  // namespace rackside
