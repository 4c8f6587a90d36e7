#include "labels/reader/equaliser.hpp"

#include <array>
#include <cmath>
#include <numeric>

#include "labels/reader/grid_fit.hpp"

namespace rackside {
namespace {

// Taps on a grid of half modules around the module's middle: all within one module, and whole
// modules at a distance of two.
constexpr int margin = 4;  // half modules of picture needed around the outermost module
struct Tap {
  int x, y;
};
const std::vector<Tap>& taps() {
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
constexpr std::size_t tap_count = 25 + 16;
constexpr double stiffness = 0.03;  // pulls towards taking the middle alone
constexpr float glare = 1.45f;      // times as bright as paper, in half contrasts
constexpr float outlier = 1.2f;     // a known module this far off is dirt or glare

using Row = std::array<double, tap_count + 1>;  // the last one is constant

struct Finer {
  int stride;
  std::vector<float> ink;  // at half modules, -1 paper, 1 ink

  [[nodiscard]] float at(int column, int row, const Tap& tap) const {
    const int x = 2 * (column + 1) + margin + tap.x, y = 2 * (row + 1) + margin + tap.y;
    return ink[static_cast<std::size_t>(y * stride + x)];
  }
  [[nodiscard]] Row row_of(int column, int row) const {
    Row features{};
    for (std::size_t i = 0; i < tap_count; ++i) features[i] = at(column, row, taps()[i]);
    features[tap_count] = 1;
    return features;
  }
};

Finer sample_halves(const Plane& plane, const Warp& warp, const SymbolLayout& layout,
                    const Tones& tones) {
  const int count = 2 * (layout.side + 1) + 1 + 2 * margin;
  Finer finer{count, {}};
  finer.ink.reserve(static_cast<std::size_t>(count * count));
  const double first = -0.5 * (layout.side + 1) - 0.5 * margin;
  for (int y = 0; y < count; ++y)
    for (int x = 0; x < count; ++x) {
      const float value = plane.at(warp(first + 0.5 * x, first + 0.5 * y));
      const int column = (x - margin) / 2 - 1, row = (y - margin) / 2 - 1;
      finer.ink.push_back(std::clamp(tones.ink(value, column, row), -2.0f, 1.6f));
    }
  return finer;
}

struct Example {
  Row features;
  double target;
};

std::vector<Example> lessons(const Finer& finer, const SymbolLayout& layout) {
  std::vector<Example> list;
  for (int row = -1; row <= layout.side; ++row)
    for (int column = -1; column <= layout.side; ++column) {
      const bool outside = row < 0 || column < 0 || row == layout.side || column == layout.side;
      const Known known = outside ? Known::Light : layout.at(column, row);
      if (known == Known::Varies) continue;
      const double target = known == Known::Dark ? 1 : -1;
      const float seen = finer.at(column, row, {0, 0});
      if (seen < -glare || std::abs(seen - target) > 1 + outlier) continue;
      list.push_back({finer.row_of(column, row), target});
    }
  return list;
}

using Matrix = std::array<Row, tap_count + 1>;

// Cholesky; the matrix is positive definite by its stiffness.
void solve(Matrix& m, Row& right) {
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

Row start_weights() {
  Row weights{};
  for (std::size_t i = 0; i < tap_count; ++i)
    if (taps()[i].x == 0 && taps()[i].y == 0) weights[i] = 1;
  return weights;
}

double answer(const Row& weights, const Row& features) {
  return std::inner_product(weights.begin(), weights.end(), features.begin(), 0.0);
}

// Least squares on what the middle alone leaves unexplained.
Row learn(const std::vector<Example>& examples) {
  Matrix m{};
  Row right{};
  const Row start = start_weights();
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

}  // namespace

Beliefs equalised(const Plane& plane, const Warp& warp, const SymbolLayout& layout) {
  const Tones tones = tones_of(sample_modules(plane, warp, layout.side), layout);
  const Finer finer = sample_halves(plane, warp, layout, tones);
  const auto examples = lessons(finer, layout);
  const Row weights = learn(examples);
  Beliefs beliefs;
  double sum = 0;
  for (const Example& example : examples) {
    const double off = answer(weights, example.features) - example.target;
    sum += off * off;
  }
  beliefs.rest = static_cast<float>(std::sqrt(sum / std::max<double>(1, examples.size())));
  for (int row = 0; row < layout.side; ++row)
    for (int column = 0; column < layout.side; ++column) {
      const bool glaring = finer.at(column, row, {0, 0}) < -glare;
      beliefs.ink.push_back(
          glaring ? 0 : static_cast<float>(answer(weights, finer.row_of(column, row))));
    }
  return beliefs;
}

std::array<int, 2> likely_masks(const Beliefs& beliefs, const SymbolLayout& layout) {
  std::array<int, 2> best{0, 0};
  std::array<float, 2> most{-1e9f, -1e9f};
  for (int mask = 0; mask < mask_count; ++mask) {
    const auto bits = format_bits(mask);
    float agreement = 0;
    for (const auto& copy : layout.format_places)
      for (std::size_t i = 0; i < 15; ++i) {
        const auto at = static_cast<std::size_t>(copy[i].row * layout.side + copy[i].column);
        const float ink = std::clamp(beliefs.ink[at], -1.0f, 1.0f);
        agreement += bits[i] ? ink : -ink;
      }
    if (agreement > most[0]) {
      best = {mask, best[0]};
      most = {agreement, most[0]};
    } else if (agreement > most[1]) {
      best[1] = mask;
      most[1] = agreement;
    }
  }
  return best;
}

std::vector<float> bit_beliefs(const Beliefs& beliefs, const SymbolLayout& layout, int mask) {
  std::vector<float> bits;
  bits.reserve(layout.bit_places.size());
  for (const ModulePlace place : layout.bit_places) {
    const float ink = std::clamp(
        beliefs.ink[static_cast<std::size_t>(place.row * layout.side + place.column)], -1.0f, 1.0f);
    bits.push_back(mask_flips(mask, place) ? -ink : ink);
  }
  return bits;
}

}  // namespace rackside
