#include "core/backtest/scores.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/forecast/normal.hpp"

namespace rackside {

double crps_by_quantiles(std::span<const double, moult_quantiles> quantiles, double happened) {
  double sum = 0;
  for (std::size_t i = 0; i < moult_quantiles; ++i) {
    const double level = static_cast<double>(i + 1) / (moult_quantiles + 1);
    const double missed = happened - quantiles[i];
    sum += missed >= 0 ? level * missed : (level - 1) * missed;
  }
  return 2 * sum / moult_quantiles;
}

double crps_of_sample(std::span<const double> sample, double happened, SampleScore kind) {
  std::vector<double> sorted(sample.begin(), sample.end());
  std::ranges::sort(sorted);
  const auto n = static_cast<double>(sorted.size());
  double missed = 0, apart = 0;
  for (std::size_t i = 0; i < sorted.size(); ++i) {
    missed += std::abs(sorted[i] - happened);
    apart += (2.0 * static_cast<double>(i) + 1 - n) * sorted[i];  // sum over pairs, half of it
  }
  const double pairs = kind == SampleScore::Fair ? n * (n - 1) : n * n;
  return missed / n - apart / pairs;
}

double crps_of_normal(double mean, double deviation, double happened) {
  const double z = (happened - mean) / deviation;
  return deviation *
         (z * (2 * normal_cdf(z) - 1) + 2 * normal_density(z) - std::numbers::inv_sqrtpi);
}

double crps_of_lognormal(double log_mean, double log_deviation, double happened) {
  const double mean = std::exp(log_mean + log_deviation * log_deviation / 2);
  const double z = happened > 0 ? (std::log(happened) - log_mean) / log_deviation : -HUGE_VAL;
  return happened * (2 * normal_cdf(z) - 1) -
         2 * mean *
             (normal_cdf(z - log_deviation) + normal_cdf(log_deviation / std::numbers::sqrt2) - 1);
}

double place_in(std::span<const double, moult_quantiles> quantiles, double happened) {
  const auto above = std::ranges::lower_bound(quantiles, happened);
  const auto below = static_cast<double>(above - quantiles.begin());
  if (above == quantiles.begin()) return happened < quantiles.front() ? 0.025 : 0.05;
  if (above == quantiles.end()) return 0.975;
  const double low = *(above - 1);
  const double part = *above > low ? (happened - low) / (*above - low) : 0.5;
  return (below + part) / (moult_quantiles + 1);
}

double brier_score(std::span<const Call> calls) {
  if (calls.empty()) return 0;
  double sum = 0;
  for (const Call& call : calls) {
    const double missed = call.probability - (call.happened ? 1 : 0);
    sum += missed * missed;
  }
  return sum / static_cast<double>(calls.size());
}

std::array<ReliabilityRow, 10> reliability(std::span<const Call> calls) {
  std::array<ReliabilityRow, 10> rows{};
  for (const Call& call : calls) {
    ReliabilityRow& row =
        rows[std::min<std::size_t>(9, static_cast<std::size_t>(call.probability * 10))];
    row.said += call.probability;
    row.happened += call.happened ? 1 : 0;
    ++row.calls;
  }
  for (ReliabilityRow& row : rows)
    if (row.calls > 0) {
      row.said /= static_cast<double>(row.calls);
      row.happened /= static_cast<double>(row.calls);
    }
  return rows;
}

}  // namespace rackside
