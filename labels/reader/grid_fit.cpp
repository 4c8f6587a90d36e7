#include "labels/reader/grid_fit.hpp"

#include <cmath>

namespace rackside {
namespace {

constexpr float data_weight = 0.5f;   // of a module that varies, beside one that is known
constexpr float seen_finder = 0.35f;  // of the best one's contrast; less is glare or no finder
constexpr float hopeless = 0.25f;     // after two rounds: nothing will come of it

struct Level {
  float middle, contrast;
};

// A finder pattern with its surroundings: half of it is dark, so that shading cancels out.
Level level_at(const ModuleSamples& samples, const SymbolLayout& layout, int left, int top) {
  float dark = 0, light = 0;
  int darks = 0, lights = 0;
  for (int row = top - 1; row <= top + 7; ++row)
    for (int column = left - 1; column <= left + 7; ++column) {
      const bool outside = row < 0 || column < 0 || row >= layout.side || column >= layout.side;
      const Known known = outside ? Known::Light : layout.at(column, row);
      if (known == Known::Dark) {
        dark += samples.at(column, row);
        ++darks;
      } else {
        light += samples.at(column, row);
        ++lights;
      }
    }
  dark /= static_cast<float>(darks);
  light /= static_cast<float>(lights);
  return {(dark + light) / 2, (light - dark) / 2};
}

}  // namespace

Tones tones_of(const ModuleSamples& samples, const SymbolLayout& layout) {
  const int far = layout.side - 7;
  std::array<Level, 3> levels{level_at(samples, layout, 0, 0), level_at(samples, layout, far, 0),
                              level_at(samples, layout, 0, far)};
  Tones tones;
  for (const Level& level : levels) tones.strongest = std::max(tones.strongest, level.contrast);
  Level seen{};
  for (const Level& level : levels)
    if (level.contrast > seen_finder * tones.strongest) {
      ++tones.finders;
      seen.middle += level.middle;
      seen.contrast += level.contrast;
    }
  const auto count = static_cast<float>(std::max(1, tones.finders));
  for (Level& level : levels)
    if (level.contrast <= seen_finder * tones.strongest)
      level = {seen.middle / count, seen.contrast / count};
  const auto distance = static_cast<float>(far);
  const auto slope = [&](const auto& of) {
    const float across = (of(levels[1]) - of(levels[0])) / distance;
    const float down = (of(levels[2]) - of(levels[0])) / distance;
    return std::array{of(levels[0]) - 3 * (across + down), across, down};
  };
  tones.middle = slope([](const Level& level) { return level.middle; });
  tones.contrast = slope([](const Level& level) { return level.contrast; });
  // The fourth corner is extrapolated: it keeps some contrast whatever the other three say.
  const float least = tones.strongest / 4;
  const auto end = static_cast<float>(layout.side);
  const float fourth = tones.contrast[0] + end * (tones.contrast[1] + tones.contrast[2]);
  if (fourth < least) tones.contrast = {seen.contrast / count, 0, 0};
  return tones;
}

float grid_score(const ModuleSamples& samples, const SymbolLayout& layout) {
  const Tones tones = tones_of(samples, layout);
  if (tones.strongest < 2 || tones.finders < 2) return 0;
  float known_sum = 0, data_sum = 0;
  int known_count = 0, data_count = 0;
  for (int row = -1; row <= layout.side; ++row)
    for (int column = -1; column <= layout.side; ++column) {
      const bool outside = row < 0 || column < 0 || row == layout.side || column == layout.side;
      const Known known = outside ? Known::Light : layout.at(column, row);
      const float ink = std::clamp(tones.ink(samples.at(column, row), column, row), -1.2f, 1.2f);
      if (known == Known::Varies) {
        data_sum += std::min(1.0f, std::abs(ink));
        ++data_count;
      } else {
        known_sum += known == Known::Dark ? ink : -ink;
        ++known_count;
      }
    }
  return (known_sum + data_weight * data_sum) /
         (static_cast<float>(known_count) + data_weight * static_cast<float>(data_count));
}

float grid_score(const Plane& plane, const WarpShape& shape, const SymbolLayout& layout) {
  return grid_score(sample_modules(plane, make_warp(shape, layout.side), layout.side), layout);
}

float fit_grid(const Plane& plane, WarpShape& shape, const SymbolLayout& layout, Surface surface,
               int rounds, const TimeLeft& time_left) {
  const double module = std::sqrt(distance_squared(shape.corners[0], shape.corners[2])) /
                        layout.side / std::sqrt(2.0);
  struct Knob {
    double* value;
    double step;
  };
  std::vector<Knob> knobs;
  for (Point& corner : shape.corners) {
    knobs.push_back({&corner.x, 0.35 * module});
    knobs.push_back({&corner.y, 0.35 * module});
  }
  if (surface == Surface::Bent)
    for (auto [point, step] :
         {std::pair{&shape.bend, 0.01}, std::pair{&shape.lift, 0.15 * module}}) {
      knobs.push_back({&point->x, step});
      knobs.push_back({&point->y, step});
    }
  float best = grid_score(plane, shape, layout);
  for (int round = 0; round < rounds && time_left(); ++round) {
    const float before = best;
    for (Knob& knob : knobs) {
      const double start = *knob.value;
      float better = best;
      double place = start;
      for (const double side : {-1.0, 1.0}) {
        *knob.value = start + side * knob.step;
        const float score = grid_score(plane, shape, layout);
        if (score > better) {
          better = score;
          place = *knob.value;
        }
      }
      *knob.value = place;
      knob.step *= better > best ? 1.2 : 0.5;
      best = better;
    }
    if (round > 1 && best - before < 0.001f) break;
    if (round == 1 && best < hopeless) break;
  }
  return best;
}

}  // namespace rackside
