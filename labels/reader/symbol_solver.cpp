#include "labels/reader/symbol_solver.hpp"

#include <algorithm>
#include <cmath>

#include "labels/reader/equaliser.hpp"
#include "labels/reader/grid_fit.hpp"

namespace rackside {
namespace {

constexpr int plain_reach = 20, sharp_reach = 20;
constexpr std::size_t most_marks = 12;  // four symbols
constexpr std::size_t crowd = 24;       // finder patterns: a sheet of labels is in view, and then
constexpr std::size_t most_marks_in_crowd = 9;  // the nearest three symbols are enough
constexpr std::size_t most_marks_paired = 4;
constexpr std::size_t most_tries = 10;  // arrangements a look
constexpr float clear_score = 0.5f;     // almost surely a symbol
constexpr float least_fit = 0.2f;
constexpr int fit_rounds = 6;
constexpr int decoding_depth = 2;

Quadrilateral corners_of(const Warp& warp, int side) {
  const double half = side / 2.0;
  return {warp(-half, -half), warp(half, -half), warp(half, half), warp(-half, half)};
}

bool inside(const Quadrilateral& corners, const Point& point) {
  for (std::size_t i = 0; i < 4; ++i) {
    const Point &a = corners[i], &b = corners[(i + 1) % 4];
    if ((b.x - a.x) * (point.y - a.y) < (b.y - a.y) * (point.x - a.x)) return false;
  }
  return true;
}

std::optional<Solved> decode_at(const Plane& plane, const WarpShape& shape,
                                const SymbolLayout& layout) {
  const Warp warp = make_warp(shape, layout.side);
  const Beliefs beliefs = equalised(plane, warp, layout);
  for (const int mask : likely_masks(beliefs, layout)) {
    const auto decoded =
        decode_softly(layout.version, bit_beliefs(beliefs, layout, mask), decoding_depth);
    if (decoded && decoded->chance_log2 < accepted_chance_log2)
      return Solved{decoded->code, corners_of(warp, layout.side)};
  }
  return std::nullopt;
}

// The share of the rows across a finder's inner square in which it was seen.
double steadiness(const FinderMark& mark) { return mark.hits / (mark.down * 3 / 7); }

// What a blur of more than two pixels leaves is there at half the size, too, where sharpening costs
// a quarter. So much of it drowns single modules in noise, but finder patterns are seven wide.
std::vector<FinderMark> blurred_finders(const Plane& plane) {
  auto marks = find_finders(sharpened(smoothed(halved(plane), 0.5), 20, 1.2), sharp_reach);
  for (FinderMark& mark : marks) {
    mark.middle = {2 * mark.middle.x, 2 * mark.middle.y};
    mark.across *= 2;
    mark.down *= 2;
  }
  return marks;
}

}  // namespace

SymbolSolver::SymbolSolver(Plane plane, double focal, Point aim)
    : plane_(std::move(plane)), soft_(smoothed(plane_, 1)), focal_(focal), aim_(aim) {}

std::vector<Solved> SymbolSolver::look(Look look, const TimeLeft& time_left) {
  find_more(look);
  if (!time_left()) return {};
  const bool crowded = marks_.size() > crowd;
  auto list =
      look == Look::InPairs
          ? arrangements_of_two(soft_, nearest_marks(most_marks_paired), focal_, time_left)
          : arrangements_of_three(soft_, nearest_marks(crowded ? most_marks_in_crowd : most_marks),
                                  focal_, time_left);
  order(list);
  std::vector<Solved> found;
  std::size_t tries = 0;
  for (const Arrangement& arrangement : list) {
    if (tries == most_tries || !time_left()) break;
    // With one code read, only what is clearly a second one is worth the time.
    if (!found.empty() && arrangement.score < clear_score) break;
    if (is_solved(arrangement)) continue;
    ++tries;
    if (auto solved = try_one(arrangement, time_left)) {
      take(*solved);
      found.push_back(*solved);
    }
  }
  return found;
}

void SymbolSolver::find_more(Look look) {
  const auto add = [&](const std::vector<FinderMark>& more) {
    for (const FinderMark& mark : more)
      if (std::ranges::none_of(
              solved_, [&](const Solved& solved) { return inside(solved.corners, mark.middle); }))
        unite(marks_, {mark});
  };
  switch (look) {
    case Look::Plain: return add(find_finders(plane_, plain_reach));
    case Look::Soft: return add(find_finders(soft_, std::max(plane_.width, plane_.height) / 8));
    case Look::Sharp: return add(find_finders(sharpened(soft_, 3, 2), sharp_reach));
    case Look::Blurred: return add(blurred_finders(plane_));
    case Look::InPairs:
      if (marks_.empty()) add(find_finders(plane_, plain_reach));
  }
}

std::vector<FinderMark> SymbolSolver::nearest_marks(std::size_t most) const {
  std::vector<FinderMark> marks = marks_;
  const auto steady = std::ranges::stable_partition(
      marks, [](const FinderMark& mark) { return steadiness(mark) > 0.4; });
  const auto far = [&](const FinderMark& mark) { return distance_squared(mark.middle, aim_); };
  std::ranges::stable_sort(marks.begin(), steady.begin(), {}, far);
  if (marks.size() > most) marks.resize(most);
  return marks;
}

void SymbolSolver::order(std::vector<Arrangement>& list) const {
  if (list.empty()) return;
  const float clear = std::max(clear_score, 0.85f * list.front().score);
  const auto vague = std::ranges::stable_partition(
      list, [clear](const Arrangement& arrangement) { return arrangement.score > clear; });
  const auto far = [&](const Arrangement& arrangement) {
    return std::round(std::sqrt(distance_squared(middle_of(arrangement.shape.corners), aim_)) / 20);
  };
  std::ranges::stable_sort(list.begin(), vague.begin(), {}, far);
}

bool SymbolSolver::is_solved(const Arrangement& arrangement) const {
  return std::ranges::any_of(solved_, [&](const Solved& solved) {
    return std::ranges::any_of(arrangement.finders,
                               [&](const Point& finder) { return inside(solved.corners, finder); });
  });
}

std::optional<Solved> SymbolSolver::try_one(Arrangement arrangement, const TimeLeft& time_left) {
  const SymbolLayout& layout = symbol_layout(arrangement.version);
  const bool flat = arrangement.shape.bend == Point{};
  const float fit = fit_grid(soft_, arrangement.shape, layout, flat ? Surface::Flat : Surface::Bent,
                             fit_rounds, time_left);
  if (fit < least_fit) return std::nullopt;
  if (auto solved = decode_at(soft_, arrangement.shape, layout)) return solved;
  if (!unread_ || fit > unread_->fit) unread_ = {arrangement.version, arrangement.shape, fit};
  return std::nullopt;
}

void SymbolSolver::take(const Solved& solved) {
  solved_.push_back(solved);
  std::erase_if(marks_,
                [&](const FinderMark& mark) { return inside(solved.corners, mark.middle); });
  if (unread_ && inside(solved.corners, middle_of(unread_->shape.corners))) unread_.reset();
}

}  // namespace rackside
