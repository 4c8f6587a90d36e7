#include "labels/reader/grid_sampling.hpp"

#include <algorithm>
#include <array>
#include <cassert>

namespace rackside {
namespace {

constexpr int most_in_row = 64;  // half modules of version 2 with their margin are 61

// Pixels of one row of places. Apart, and in single precision, so that several are taken at once.
struct RowOfPlaces {
  float x[most_in_row], y[most_in_row];
};

struct SinglePrecision {
  Bending<float> bent;
  std::array<float, 9> plane{};
  float lift_x, lift_y;

  explicit SinglePrecision(const Warp& warp)
      : bent(warp.bend),
        lift_x(static_cast<float>(warp.lift.x)),
        lift_y(static_cast<float>(warp.lift.y)) {
    std::ranges::transform(warp.plane, plane.begin(),
                           [](double value) { return static_cast<float>(value); });
  }
};

// Counted in int, which becomes float four at a time; the warp by value, so that the compiler knows
// that writing places does not change it.
void make_row(RowOfPlaces& row, const SinglePrecision warp, float first, float step, float y,
              int count) {
  const auto& m = warp.plane;
  for (int i = 0; i < count; ++i) {
    const auto at = warp.bent(first + step * static_cast<float>(i), y);
    const float nearness = 1 / (m[6] * at.x + m[7] * at.y + m[8]);
    row.x[i] = (m[0] * at.x + m[1] * at.y + m[2]) * nearness + warp.lift_x * at.depth;
    row.y[i] = (m[3] * at.x + m[4] * at.y + m[5]) * nearness + warp.lift_y * at.depth;
  }
}

void keep_inside(float* places, int count, int extent) {
  const float most = static_cast<float>(extent) - 1.001f;
  for (int i = 0; i < count; ++i) places[i] = std::min(std::max(0.0f, places[i] - 0.5f), most);
}

}  // namespace

std::vector<float> sample_grid(const Plane& plane, const Warp& warp, double first, double step,
                               int count) {
  assert(count <= most_in_row);
  const SinglePrecision single(warp);
  const auto start = static_cast<float>(first), stride = static_cast<float>(step);
  std::vector<float> samples(static_cast<std::size_t>(count) * static_cast<std::size_t>(count));
  RowOfPlaces places;
  for (int row = 0; row < count; ++row) {
    make_row(places, single, start, stride, start + stride * static_cast<float>(row), count);
    keep_inside(places.x, count, plane.width);
    keep_inside(places.y, count, plane.height);
    float* out = samples.data() + row * count;
    for (int i = 0; i < count; ++i) out[i] = plane.between(places.x[i], places.y[i]);
  }
  return samples;
}

ModuleSamples sample_modules(const Plane& plane, const Warp& warp, int side) {
  return {static_cast<std::size_t>(side + 2),
          sample_grid(plane, warp, -0.5 * (side + 1), 1, side + 2)};
}

}  // namespace rackside
