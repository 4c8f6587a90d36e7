#include "labels/reader/symptoms.hpp"

#include <algorithm>
#include <cmath>

#include "labels/reader/grid_fit.hpp"

namespace rackside {
namespace {

// Where the share read by one frame falls below nine in ten on synthetic frames (reading.md).
constexpr double least_module = 2.5;
constexpr double least_contrast = 25;
constexpr double least_crispness = 0.45;
constexpr double most_glare = 0.08;
constexpr double least_squeeze = 0.45;

double length(const Point& a, const Point& b) { return std::sqrt(distance_squared(a, b)); }

// The light ring inside each finder pattern is one module wide, the dark square in it three.
double crispness_of(const ModuleSamples& samples, const Tones& tones, int side) {
  double ring = 0, square = 0;
  int rings = 0, squares = 0;
  for (const auto& [left, top] : {std::pair{0, 0}, {side - 7, 0}, {0, side - 7}})
    for (int y = 1; y <= 5; ++y)
      for (int x = 1; x <= 5; ++x) {
        const float ink = tones.ink(samples.at(left + x, top + y), left + x, top + y);
        const bool on_ring = x == 1 || x == 5 || y == 1 || y == 5;
        (on_ring ? ring : square) += ink;
        ++(on_ring ? rings : squares);
      }
  return std::clamp((square / squares - ring / rings) / 2, 0.0, 1.0);
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

}  // namespace

std::string_view guidance_words(Guidance guidance) {
  switch (guidance) {
    case Guidance::ComeCloser: return "come closer";
    case Guidance::MoreLight: return "more light";
    case Guidance::TiltIt: return "tilt it";
    case Guidance::FaceIt: return "face the camera";
    case Guidance::HoldStill: return "hold it still";
  }
  return "";
}

Symptoms measure(const Plane& plane, const Unread& unread) {
  const SymbolLayout& layout = symbol_layout(unread.version);
  const auto samples = sample_modules(plane, make_warp(unread.shape, layout.side), layout.side);
  const Tones tones = tones_of(samples, layout);
  const auto& corner = unread.shape.corners;
  const double across = (length(corner[0], corner[1]) + length(corner[3], corner[2])) / 2;
  const double down = (length(corner[0], corner[3]) + length(corner[1], corner[2])) / 2;
  return {std::max(across, down) / layout.side, 2.0 * tones.strongest,
          crispness_of(samples, tones, layout.side), glare_of(samples, tones, layout.side),
          std::min(across, down) / std::max(across, down)};
}

Symptoms measure(const FinderMark& mark) {
  // Turned by 45 degrees, a row through the middle is longer by the root of two.
  return {.module_px = std::max(mark.across, mark.down) / 7 / 1.2, .contrast = 255};
}

std::optional<Guidance> guidance_for(const Symptoms& symptoms) {
  if (symptoms.glare > most_glare) return Guidance::TiltIt;
  if (symptoms.module_px < least_module) return Guidance::ComeCloser;
  if (symptoms.contrast < least_contrast) return Guidance::MoreLight;
  if (symptoms.squeeze < least_squeeze) return Guidance::FaceIt;
  if (symptoms.crispness < least_crispness) return Guidance::HoldStill;
  return std::nullopt;
}

}  // namespace rackside
