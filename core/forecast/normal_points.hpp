#pragma once
// Evenly spaced points of a standard normal with their weights: how the enumeration takes in a
// length that is only known with its spread.

#include <array>

#include "core/forecast/normal.hpp"

namespace rackside {

template <std::size_t N>
struct NormalPoints {
  std::array<double, N> z{}, weight{};

  explicit NormalPoints(double reach) {
    double sum = 0;
    for (std::size_t i = 0; i < N; ++i) {
      z[i] = reach * (2.0 * static_cast<double>(i) / (N - 1) - 1);
      sum += weight[i] = normal_density(z[i]);
    }
    for (double& w : weight) w /= sum;
  }
};

}  // namespace rackside
