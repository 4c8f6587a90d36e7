#pragma once
// Our own way from a picture to codes: finder patterns, grid, filter, soft decoding. See
// reading.md.

#include <array>
#include <optional>
#include <vector>

#include "labels/reader/arrangement.hpp"
#include "labels/reader/soft_decoder.hpp"

namespace rackside {

struct Solved {
  Code code;
  Quadrilateral corners;  // in the pixels of the plane
};

/// A symbol that is there but was not read.
struct Unread {
  int version = 1;
  WarpShape shape;
  float fit = 0;  // grid_score
};

/// Different ways to look for finder patterns; each finds some that the others miss, and what they
/// find adds up.
enum class Look {
  Plain,    // the picture as it is: cheap
  Soft,     // smoothed, with a wide threshold: noise, large symbols
  Sharp,    // smoothed and over-sharpened: blur, few pixels a module
  InPairs,  // two finder patterns of three: glare and dirt
  Blurred   // half as large and sharpened beyond measure: out of focus, moved
};

/// What a still picture is given, for which there is time.
inline constexpr std::array all_looks{Look::Plain, Look::Soft, Look::Sharp, Look::InPairs,
                                      Look::Blurred};

/// Works on one picture. Symbols near `aim` come first and, among many, are the only ones tried.
class SymbolSolver {
 public:
  /// `focal`: of the camera, in pixels of the plane.
  SymbolSolver(Plane plane, double focal, Point aim);

  /// Codes not solved by an earlier look, nearest to the aim first.
  [[nodiscard]] std::vector<Solved> look(Look look, const TimeLeft& time_left);

  /// All finder patterns seen so far that are not part of a solved symbol.
  [[nodiscard]] const std::vector<FinderMark>& marks() const { return marks_; }
  /// The clearest symbol not read.
  [[nodiscard]] const std::optional<Unread>& unread() const { return unread_; }
  /// The picture that grids are laid on: slightly smoothed.
  [[nodiscard]] const Plane& plane() const { return soft_; }

 private:
  void find_more(Look look);
  [[nodiscard]] std::vector<FinderMark> nearest_marks(std::size_t most) const;
  void order(std::vector<Arrangement>& list) const;
  [[nodiscard]] bool is_solved(const Arrangement& arrangement) const;
  [[nodiscard]] std::optional<Solved> try_one(Arrangement arrangement, const TimeLeft& time_left);
  void take(const Solved& solved);

  Plane plane_, soft_;
  double focal_;
  Point aim_;
  std::vector<FinderMark> marks_;
  std::vector<Solved> solved_;
  std::optional<Unread> unread_;
};

}  // namespace rackside
