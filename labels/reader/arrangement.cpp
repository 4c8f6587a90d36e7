#include "labels/reader/arrangement.hpp"

#include <array>
#include <cmath>

#include "labels/reader/grid_fit.hpp"

namespace rackside {
namespace {

constexpr double size_tolerance = 1.45;  // of a finder's seen size to the one the grid says
constexpr float least_score = 0.12f;
constexpr float surely_flat = 0.9f;
// Of the way to a hidden third finder, beside that between two known ones: steps of a module's
// width there.
constexpr double least_stretch = 0.45, stretch_step = 1.13, lean_step = 0.12;
constexpr int stretches = 14, leans = 5;

struct Axes {
  Point u, v;  // px a module along the symbol's rows and columns
};

double off_by(double seen, double expected) {
  return seen > expected ? seen / expected : expected / seen;
}

// A line through a finder's middle leaves it where the nearer of the two edges is.
bool fits_size(const Axes& axes, const FinderMark& mark) {
  const double area = axes.u.x * axes.v.y - axes.u.y * axes.v.x;
  if (area <= 0) return false;  // mirrored or without area
  const double across = 7 * area / std::max(std::abs(axes.v.y), std::abs(axes.u.y));
  const double down = 7 * area / std::max(std::abs(axes.v.x), std::abs(axes.u.x));
  return off_by(mark.across, across) < size_tolerance && off_by(mark.down, down) < size_tolerance;
}

Axes axes_between(const Point& corner, const Point& right, const Point& below, double modules) {
  return {{(right.x - corner.x) / modules, (right.y - corner.y) / modules},
          {(below.x - corner.x) / modules, (below.y - corner.y) / modules}};
}

// Two finders of one symbol differ in size by perspective and bending only.
bool alike(const FinderMark& a, const FinderMark& b) {
  return off_by(a.across, b.across) < size_tolerance && off_by(a.down, b.down) < size_tolerance;
}

// Top left, top right, bottom left: the middles of the finder patterns, from the symbol's middle.
std::array<Point, 3> finder_places(int side) {
  const double reach = side / 2.0 - 3.5;
  return {{{-reach, -reach}, {reach, -reach}, {-reach, reach}}};
}

void judge(std::vector<Arrangement>& list, const Plane& plane, int version,
           const std::array<Point, 3>& pixels, double focal, const WarpGuess& guess) {
  const SymbolLayout& layout = symbol_layout(version);
  Arrangement made{version,
                   shape_through(finder_places(layout.side), pixels, layout.side, focal, guess), 0,
                   pixels};
  made.score = grid_score(plane, made.shape, layout);
  if (made.score > least_score) list.push_back(made);
}

void add_guesses(std::vector<Arrangement>& list, const Plane& plane, int version,
                 const std::array<Point, 3>& pixels, double focal) {
  judge(list, plane, version, pixels, focal, {0, {}});
  for (const double sign : {-1.0, 1.0}) {
    const std::size_t before = list.size();
    judge(list, plane, version, pixels, focal, {sign, {}});
    // Hopeless flat, or so good that bending it could only spoil it.
    if (list.size() == before || list.back().score > surely_flat) continue;
    for (int eighth = 0; eighth < 8; ++eighth) {
      constexpr double curvature = 0.05;  // a tub of 10 mm radius at half a millimetre a module
      const double angle = eighth * 0.3926990817;
      judge(list, plane, version, pixels, focal,
            {sign, {curvature * std::cos(angle), curvature * std::sin(angle)}});
    }
  }
}

void best_first(std::vector<Arrangement>& list) {
  std::ranges::stable_sort(list, std::greater{}, &Arrangement::score);
}

// Of one set of finder marks only the guesses that look best go on: fitting brings the others to
// the same place.
void keep_best_since(std::vector<Arrangement>& list, std::size_t before, std::size_t most) {
  const auto begin = list.begin() + static_cast<std::ptrdiff_t>(before);
  std::stable_sort(begin, list.end(),
                   [](const Arrangement& a, const Arrangement& b) { return a.score > b.score; });
  if (list.size() > before + most) list.resize(before + most);
}

void try_corner(std::vector<Arrangement>& list, const Plane& plane, const FinderMark& corner,
                const FinderMark& right, const FinderMark& below, double focal,
                const TimeLeft& time_left) {
  for (const int version : {1, 2}) {
    const double modules = symbol_layout(version).side - 7;
    const Axes axes = axes_between(corner.middle, right.middle, below.middle, modules);
    const std::size_t before = list.size();
    if (fits_size(axes, corner) && fits_size(axes, right) && fits_size(axes, below) && time_left())
      add_guesses(list, plane, version, {corner.middle, right.middle, below.middle}, focal);
    keep_best_since(list, before, 2);
  }
}

// Where the third finder may be when two are known: the axis that leads there is tried all around.
void try_pair(std::vector<Arrangement>& list, const Plane& plane, const FinderMark& first,
              const FinderMark& second, double focal, const TimeLeft& time_left) {
  const Point a = first.middle, b = second.middle;
  for (const int version : {1, 2}) {
    const double modules = symbol_layout(version).side - 7;
    const auto moved = [&](const Point& from, const Point& axis) {
      return Point{from.x + modules * axis.x, from.y + modules * axis.y};
    };
    const std::size_t before = list.size();
    const Point u{(second.middle.x - first.middle.x) / modules,
                  (second.middle.y - first.middle.y) / modules};
    for (int i = 0; i < stretches && time_left(); ++i)
      for (int k = -leans; k <= leans; ++k) {
        const double stretch = least_stretch * std::pow(stretch_step, i), lean = k * lean_step;
        const Point v{stretch * (-u.y * std::cos(lean) - u.x * std::sin(lean)),
                      stretch * (u.x * std::cos(lean) - u.y * std::sin(lean))};
        // The known two are the upper ones, or the left ones (turned by a quarter).
        if (fits_size({u, v}, first) && fits_size({u, v}, second)) {
          judge(list, plane, version, {a, b, moved(a, v)}, focal, {});
          judge(list, plane, version, {b, moved(b, v), a}, focal, {});
        }
        // Or the two that lie across from each other: then u and v are the symbol's diagonals.
        const Axes axes{{(u.x + v.x) / 2, (u.y + v.y) / 2}, {(v.x - u.x) / 2, (v.y - u.y) / 2}};
        if (fits_size(axes, first) && fits_size(axes, second))
          judge(list, plane, version, {moved(a, {-axes.v.x, -axes.v.y}), b, a}, focal, {});
      }
    keep_best_since(list, before, 3);
  }
}

}  // namespace

std::vector<Arrangement> arrangements_of_three(const Plane& plane,
                                               const std::vector<FinderMark>& marks, double focal,
                                               const TimeLeft& time_left) {
  std::vector<Arrangement> list;
  for (std::size_t i = 0; i < marks.size(); ++i)
    for (std::size_t j = 0; j < marks.size(); ++j)
      for (std::size_t k = 0; k < marks.size(); ++k)
        if (i != j && j != k && i != k)
          try_corner(list, plane, marks[i], marks[j], marks[k], focal, time_left);
  best_first(list);
  return list;
}

std::vector<Arrangement> arrangements_of_two(const Plane& plane,
                                             const std::vector<FinderMark>& marks, double focal,
                                             const TimeLeft& time_left) {
  std::vector<Arrangement> list;
  for (std::size_t i = 0; i < marks.size(); ++i)
    for (std::size_t j = 0; j < marks.size(); ++j)
      if (i != j && alike(marks[i], marks[j]))
        try_pair(list, plane, marks[i], marks[j], focal, time_left);
  best_first(list);
  return list;
}

}  // namespace rackside
