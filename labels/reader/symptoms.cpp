#include "labels/reader/symptoms.hpp"

#include <algorithm>
#include <cmath>

#include "labels/reader/grid_fit.hpp"

namespace rackside {
namespace {

// Where labels begin to be missed, on synthetic frames (reading.md).
constexpr double least_module = 2.5;
constexpr double least_contrast = 25;
constexpr double least_crispness = 0.75;
constexpr double most_glare = 0.04;
constexpr double least_squeeze = 0.45;
constexpr double most_far_crispness = 0.87;  // what is small and sharper than that is print

double length(const Point& a, const Point& b) { return std::sqrt(distance_squared(a, b)); }

// What a finder pattern shows of the lens, in grey levels.
struct FinderLevels {
  double middle = 0, ring = 0, outside = 0;
};

FinderLevels levels_at(const ModuleSamples& samples, int side, int left, int top) {
  FinderLevels levels{samples.at(left + 3, top + 3), 0, 0};
  for (int i = 2; i <= 4; ++i)
    levels.ring += (samples.at(left + i, top + 1) + samples.at(left + i, top + 5) +
                    samples.at(left + 1, top + i) + samples.at(left + 5, top + i)) /
                   12;
  const int beside = left == 0 ? -1 : side, above = top == 0 ? -1 : side;
  for (int i = 1; i <= 5; ++i)
    levels.outside += (samples.at(beside, top + i) + samples.at(left + i, above)) / 10;
  return levels;
}

// Of the pattern with the most contrast: glare and dirt spare at least one.
FinderLevels clearest_levels(const ModuleSamples& samples, int side) {
  FinderLevels clearest;
  for (const auto& [left, top] : {std::pair{0, 0}, {side - 7, 0}, {0, side - 7}}) {
    const FinderLevels levels = levels_at(samples, side, left, top);
    if (levels.outside - levels.middle > clearest.outside - clearest.middle) clearest = levels;
  }
  return clearest;
}

// The light ring inside the pattern is one module wide: how much of the way from the dark middle
// to the quiet zone outside does it go?
double crispness_of(const FinderLevels& levels) {
  if (levels.outside <= levels.middle) return 0;
  return std::clamp((levels.ring - levels.middle) / (levels.outside - levels.middle), 0.0, 1.0);
}

double glare_of(const ModuleSamples& samples, const Tones& tones, int side) {
  constexpr float brighter = -1.45f, saturated = 250;
  int count = 0;
  for (int row = 0; row < side; ++row)
    for (int column = 0; column < side; ++column) {
      const float value = samples.at(column, row);
      if (value >= saturated && tones.ink(value, column, row) < brighter) ++count;
    }
  return static_cast<double>(count) / (side * side);
}

// Along the row and the column through its middle, which are cut in the same proportions whichever
// way the pattern is turned.
FinderLevels levels_at(const Plane& plane, const FinderMark& mark) {
  const auto level = [&](double modules) {
    const double x = mark.across / 7 * modules, y = mark.down / 7 * modules;
    return (plane.at({mark.middle.x - x, mark.middle.y}) +
            plane.at({mark.middle.x + x, mark.middle.y}) +
            plane.at({mark.middle.x, mark.middle.y - y}) +
            plane.at({mark.middle.x, mark.middle.y + y})) /
           4.0;
  };
  return {level(0), level(2), level(4)};
}

// The part of a square around a finder pattern that is saturated, and brighter than its paper.
double glare_around(const Plane& plane, const Point& middle, double reach, double paper) {
  const double bright = std::max(250.0, paper + 10);
  const auto from = [](double least) { return std::max(0, static_cast<int>(least)); };
  int bright_ones = 0, all = 0;
  for (int y = from(middle.y - reach); y < std::min<double>(plane.height, middle.y + reach); ++y)
    for (int x = from(middle.x - reach); x < std::min<double>(plane.width, middle.x + reach); ++x) {
      ++all;
      bright_ones += plane.at(x, y) >= bright;
    }
  return static_cast<double>(bright_ones) / std::max(1, all);
}

}  // namespace

Symptoms measure(const Plane& plane, const Unread& unread) {
  const SymbolLayout& layout = symbol_layout(unread.version);
  const auto samples = sample_modules(plane, make_warp(unread.shape, layout.side), layout.side);
  const Tones tones = tones_of(samples, layout);
  const FinderLevels levels = clearest_levels(samples, layout.side);
  const auto& corner = unread.shape.corners;
  const double across = (length(corner[0], corner[1]) + length(corner[3], corner[2])) / 2;
  const double down = (length(corner[0], corner[3]) + length(corner[1], corner[2])) / 2;
  return {std::max(across, down) / layout.side, levels.outside - levels.middle,
          crispness_of(levels), glare_of(samples, tones, layout.side),
          std::min(across, down) / std::max(across, down)};
}

Symptoms measure(const Plane& plane, const FinderMark& mark) {
  const FinderLevels levels = levels_at(plane, mark);
  // Turned by 45 degrees, a row through the middle is longer by the root of two.
  const double module = std::max(mark.across, mark.down) / 7 / 1.2;
  return {.module_px = module,
          .contrast = levels.outside - levels.middle,
          .crispness = crispness_of(levels),
          .glare = glare_around(plane, mark.middle, 14 * module, levels.outside)};
}

std::optional<Guidance> guidance_for(const Symptoms& symptoms) {
  if (symptoms.glare > most_glare) return Guidance::TiltIt;
  if (symptoms.module_px < least_module) return Guidance::ComeCloser;
  if (symptoms.contrast < least_contrast) return Guidance::MoreLight;
  if (symptoms.squeeze < least_squeeze) return Guidance::FaceIt;
  if (symptoms.crispness < least_crispness) return Guidance::HoldStill;
  return std::nullopt;
}

std::optional<Guidance> guidance_for_lone(const FinderMark& mark, const Symptoms& symptoms) {
  const bool steady = mark.hits >= 3 && mark.hits > 0.5 * mark.down * 3 / 7;
  if (!steady || symptoms.contrast < least_contrast) return std::nullopt;
  if (symptoms.module_px < least_module)
    return symptoms.crispness < most_far_crispness ? std::optional(Guidance::ComeCloser)
                                                   : std::nullopt;
  return symptoms.glare > most_glare ? std::optional(Guidance::TiltIt) : std::nullopt;
}

}  // namespace rackside
