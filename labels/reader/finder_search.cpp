#include "labels/reader/finder_search.hpp"

#include <array>
#include <cmath>
#include <optional>
#include <span>

namespace rackside {
namespace {

constexpr float threshold_bias = 2;   // grey levels: keeps empty paper's noise on the light side
constexpr double least_module = 1.1;  // px
constexpr double most_tilted = 2.6;   // how much longer a finder may be one way than the other

struct Cut {
  double middle;
  double extent;  // edge to edge
};

// Six edges, light to dark first. Distances between edges of the same kind do not change when ink
// spreads or a threshold is off, so these are compared, not the runs.
std::optional<Cut> as_cut(std::span<const double, 6> edge) {
  const double a = edge[2] - edge[0], b = edge[3] - edge[1], c = edge[4] - edge[2],
               d = edge[5] - edge[3];
  const double module = (a + b + c + d) / 12;
  const auto off = [&](double length, double modules, double tolerance) {
    return std::abs(length - modules * module) > tolerance * module;
  };
  if (module < least_module || off(a, 2, 0.8) || off(d, 2, 0.8) || off(b, 4, 1.1) ||
      off(c, 4, 1.1) || off(edge[3] - edge[2], 3, 1.2))
    return std::nullopt;
  const double middle = (edge[0] + edge[1] + edge[2] + edge[3] + edge[4] + edge[5]) / 6;
  return Cut{middle, 7 * module};
}

// The picture against its local threshold: negative is dark.
struct Relief {
  Plane height;

  Relief(const Plane& plane, int reach) : height(box_mean(plane, reach)) {
    for (std::size_t i = 0; i < height.value.size(); ++i)
      height.value[i] = plane.value[i] - height.value[i] + threshold_bias;
  }

  // Where between two pixels the sign changes.
  static double crossing(float before, float after) { return before / (before - after); }

  // Walks from `at` by `step` along a line of `count` values `stride` apart; three edges outwards.
  static bool edges_from(const float* line, int count, int stride, int at, int step, double limit,
                         std::array<double, 3>& edges) {
    std::size_t found = 0;
    float before = line[at * stride];
    for (int i = at + step; i >= 0 && i < count; before = line[i * stride], i += step) {
      if (std::abs(i - at) > limit) return false;
      const float here = line[i * stride];
      if ((before < 0) == (here < 0)) continue;
      edges[found++] = i + 0.5 - step + step * crossing(before, here);
      if (found == 3) return true;
    }
    return false;
  }

  static std::optional<Cut> cut_through(const float* line, int count, int stride, double middle,
                                        double limit) {
    const int at = static_cast<int>(middle);
    if (at < 0 || at >= count || line[at * stride] >= 0) return std::nullopt;
    std::array<double, 3> before, after;
    if (!edges_from(line, count, stride, at, -1, limit, before) ||
        !edges_from(line, count, stride, at, 1, limit, after))
      return std::nullopt;
    return as_cut(std::array{before[2], before[1], before[0], after[0], after[1], after[2]});
  }

  [[nodiscard]] std::optional<Cut> down(double x, double y, double limit) const {
    const int column = std::clamp(static_cast<int>(x), 0, height.width - 1);
    return cut_through(height.row(0) + column, height.height, height.width, y, limit);
  }
  [[nodiscard]] std::optional<Cut> across(double x, double y, double limit) const {
    const int line = std::clamp(static_cast<int>(y), 0, height.height - 1);
    return cut_through(height.row(line), height.width, 1, x, limit);
  }
};

std::optional<FinderMark> confirmed(const Relief& relief, const Cut& row, int y) {
  const auto down = relief.down(row.middle, y, row.extent * most_tilted);
  if (!down || down->extent * most_tilted < row.extent) return std::nullopt;
  const auto across = relief.across(row.middle, down->middle, row.extent);
  if (!across) return std::nullopt;
  const auto again = relief.down(across->middle, down->middle, row.extent * most_tilted);
  if (!again) return std::nullopt;
  return FinderMark{{across->middle, again->middle}, across->extent, again->extent, 1};
}

void edges_of_row(const float* row, int width, std::vector<double>& edges) {
  edges.clear();
  if (row[0] < 0) edges.push_back(0);
  for (int x = 1; x < width; ++x)
    if ((row[x - 1] < 0) != (row[x] < 0))
      edges.push_back(x - 0.5 + Relief::crossing(row[x - 1], row[x]));
}

bool same_finder(const FinderMark& a, const FinderMark& b) {
  const double near = std::min(a.across + a.down, b.across + b.down) / 7;
  return distance_squared(a.middle, b.middle) < near * near;
}

void add_mark(std::vector<FinderMark>& marks, const FinderMark& mark) {
  for (FinderMark& known : marks) {
    if (!same_finder(known, mark)) continue;
    const double share = static_cast<double>(mark.hits) / (known.hits + mark.hits);
    const auto mix = [&](double& value, double other) { value += share * (other - value); };
    mix(known.middle.x, mark.middle.x);
    mix(known.middle.y, mark.middle.y);
    mix(known.across, mark.across);
    mix(known.down, mark.down);
    known.hits += mark.hits;
    return;
  }
  marks.push_back(mark);
}

}  // namespace

std::vector<FinderMark> find_finders(const Plane& plane, int reach) {
  const Relief relief(plane, reach);
  std::vector<FinderMark> marks;
  std::vector<double> edges;
  for (int y = 0; y < plane.height; ++y) {
    edges_of_row(relief.height.row(y), plane.width, edges);
    for (std::size_t i = 0; i + 6 <= edges.size(); i += 2) {
      const auto cut = as_cut(std::span<const double, 6>(edges.data() + i, 6));
      if (!cut) continue;
      if (const auto mark = confirmed(relief, *cut, y)) add_mark(marks, *mark);
    }
  }
  std::ranges::stable_sort(marks, std::greater{}, &FinderMark::hits);
  return marks;
}

void unite(std::vector<FinderMark>& marks, const std::vector<FinderMark>& more) {
  for (const FinderMark& mark : more) add_mark(marks, mark);
  std::ranges::stable_sort(marks, std::greater{}, &FinderMark::hits);
}

}  // namespace rackside
