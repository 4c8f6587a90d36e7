#include "labels/reader/equaliser.hpp"

#include <array>
#include <cmath>

#include "labels/reader/grid_fit.hpp"
#include "labels/reader/learned_filter.hpp"

namespace rackside {
namespace {

constexpr int margin = 4;        // half modules of picture needed around the outermost module
constexpr float glare = 1.45f;   // times as bright as paper, in half contrasts
constexpr float outlier = 1.2f;  // a known module this far off is dirt or glare

struct Finer {
  std::size_t stride;
  std::vector<float> ink;  // at half modules, -1 paper, 1 ink

  [[nodiscard]] float at(int column, int row, const Tap& tap) const {
    const int x = 2 * (column + 1) + margin + tap.x, y = 2 * (row + 1) + margin + tap.y;
    return ink[static_cast<std::size_t>(y) * stride + static_cast<std::size_t>(x)];
  }
  [[nodiscard]] Features around(int column, int row) const {
    Features features{};
    for (std::size_t i = 0; i < tap_count; ++i) features[i] = at(column, row, filter_taps()[i]);
    features[tap_count] = 1;
    return features;
  }
};

Finer sample_halves(const Plane& plane, const Warp& warp, const SymbolLayout& layout,
                    const Tones& tones) {
  const int count = 2 * (layout.side + 1) + 1 + 2 * margin;
  const double first = -0.5 * (layout.side + 1) - 0.5 * margin;
  Finer finer{static_cast<std::size_t>(count), sample_grid(plane, warp, first, 0.5, count)};
  auto value = finer.ink.begin();
  for (int y = 0; y < count; ++y)
    for (int x = 0; x < count; ++x, ++value) {
      const int column = (x - margin) / 2 - 1, row = (y - margin) / 2 - 1;
      *value = std::clamp(tones.ink(*value, column, row), -2.0f, 1.6f);
    }
  return finer;
}

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
      list.push_back({finer.around(column, row), target});
    }
  return list;
}

}  // namespace

Beliefs equalised(const Plane& plane, const Warp& warp, const SymbolLayout& layout) {
  const Tones tones = tones_of(sample_modules(plane, warp, layout.side), layout);
  const Finer finer = sample_halves(plane, warp, layout, tones);
  const auto examples = lessons(finer, layout);
  const Features weights = learned_filter(examples);
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
          glaring ? 0 : static_cast<float>(answer(weights, finer.around(column, row))));
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
        const float ink = std::clamp(beliefs.ink[layout.index(copy[i])], -1.0f, 1.0f);
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
    const float ink = std::clamp(beliefs.ink[layout.index(place)], -1.0f, 1.0f);
    bits.push_back(mask_flips(mask, place) ? -ink : ink);
  }
  return bits;
}

}  // namespace rackside
