#include "labels/reader/symbol_solver.hpp"

#include <cstdio>
#include <cstdlib>

#include "labels/reader/equaliser.hpp"
#include "labels/reader/grid_fit.hpp"

namespace rackside {
namespace {

Quadrilateral corners_of(const Warp& warp, int side) {
  const double half = side / 2.0;
  return {warp(-half, -half), warp(half, -half), warp(half, half), warp(-half, half)};
}

std::optional<Solved> decode_at(const Plane& plane, const WarpShape& shape,
                                const SymbolLayout& layout) {
  const Warp warp = make_warp(shape, layout.side);
  const Beliefs beliefs = equalised(plane, warp, layout);
  for (const int mask : likely_masks(beliefs, layout)) {
    const auto decoded = decode_softly(layout.version, bit_beliefs(beliefs, layout, mask), 2);
    if (getenv("DBG") && decoded) fprintf(stderr, "   mask %d against %.3f chance %.1f rest %.2f\n", mask, decoded->against, decoded->chance_log2, beliefs.rest);
    if (decoded && decoded->chance_log2 < accepted_chance_log2)
      return Solved{decoded->code, corners_of(warp, layout.side), layout.version, decoded->against,
                    decoded->chance_log2};
  }
  return std::nullopt;
}

std::optional<Solved> best_of(const Plane& plane, std::vector<Arrangement> list, std::size_t most,
                              const TimeLeft& time_left) {
  if (list.size() > most) list.resize(most);
  for (Arrangement& arrangement : list) {
    if (!time_left()) return std::nullopt;
    const SymbolLayout& layout = symbol_layout(arrangement.version);
    const bool flat = arrangement.shape.bend == Point{};
    const float fit = fit_grid(plane, arrangement.shape, layout, flat ? Surface::Flat : Surface::Bent, 6);
    if (getenv("DBG")) fprintf(stderr, "  v%d %s score %.3f fit %.3f\n", layout.version, flat?"flat":"bent", arrangement.score, fit);
    if (fit < 0.2f) continue;
    if (auto solved = decode_at(plane, arrangement.shape, layout)) return solved;
  }
  return std::nullopt;
}

}  // namespace

std::optional<Solved> solve_symbol(const Plane& plane, double focal, const TimeLeft& time_left) {
  std::vector<FinderMark> marks = find_finders(plane, 12);
  const Plane soft = smoothed(plane, 1.0);
  unite(marks, find_finders(soft, 12));
  unite(marks, find_finders(sharpened(soft, 3, 2.0), 12));
  if (getenv("DBG")) for (auto& m : marks) fprintf(stderr, " mark %.1f %.1f across %.1f down %.1f hits %d\n", m.middle.x, m.middle.y, m.across, m.down, m.hits);
  if (marks.size() > 12) marks.resize(12);
  if (!time_left()) return std::nullopt;
  if (auto solved = best_of(soft, arrangements_of_three(soft, marks, focal), 8, time_left)) return solved;
  if (marks.size() > 5) marks.resize(5);
  return best_of(soft, arrangements_of_two(soft, marks, focal), 8, time_left);
}

}  // namespace rackside
