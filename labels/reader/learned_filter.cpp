#include "labels/reader/learned_filter.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <numeric>

namespace rackside {
namespace {

constexpr double stiffness = 0.03;  // pulls towards taking the middle alone

using Matrix = std::array<Features, tap_count + 1>;

// Cholesky; the matrix is positive definite by its stiffness.
void solve(Matrix& m, Features& right) {
  constexpr std::size_t n = tap_count + 1;
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = 0; j <= i; ++j) {
      double sum = m[i][j];
      for (std::size_t k = 0; k < j; ++k) sum -= m[i][k] * m[j][k];
      m[i][j] = i == j ? std::sqrt(std::max(sum, 1e-9)) : sum / m[j][j];
    }
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t k = 0; k < i; ++k) right[i] -= m[i][k] * right[k];
    right[i] /= m[i][i];
  }
  for (std::size_t i = n; i-- > 0;) {
    for (std::size_t k = i + 1; k < n; ++k) right[i] -= m[k][i] * right[k];
    right[i] /= m[i][i];
  }
}

Features start_weights() {
  Features weights{};
  for (std::size_t i = 0; i < tap_count; ++i)
    if (filter_taps()[i].x == 0 && filter_taps()[i].y == 0) weights[i] = 1;
  return weights;
}

}  // namespace

const std::vector<Tap>& filter_taps() {
  static const std::vector<Tap> list = [] {
    std::vector<Tap> made;
    for (int y = -4; y <= 4; ++y)
      for (int x = -4; x <= 4; ++x) {
        const int reach = std::max(std::abs(x), std::abs(y));
        const bool whole = x % 2 == 0 && y % 2 == 0;
        if (reach <= 2 || (reach == 4 && whole)) made.push_back({x, y});
      }
    return made;
  }();
  return list;
}

double answer(const Features& weights, const Features& features) {
  return std::inner_product(weights.begin(), weights.end(), features.begin(), 0.0);
}

// Least squares on what the middle alone leaves unexplained.
Features learned_filter(const std::vector<Example>& examples) {
  Matrix m{};
  Features right{};
  const Features start = start_weights();
  for (const Example& example : examples) {
    const double rest = example.target - answer(start, example.features);
    for (std::size_t i = 0; i <= tap_count; ++i) {
      right[i] += rest * example.features[i];
      for (std::size_t j = 0; j <= i; ++j) m[i][j] += example.features[i] * example.features[j];
    }
  }
  for (std::size_t i = 0; i <= tap_count; ++i)
    m[i][i] += stiffness * static_cast<double>(examples.size());
  solve(m, right);
  for (std::size_t i = 0; i <= tap_count; ++i) right[i] += start[i];
  return right;
}

}  // namespace rackside
