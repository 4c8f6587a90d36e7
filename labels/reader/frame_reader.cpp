#include "labels/reader/frame_reader.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <utility>

#include "labels/reader/library_pass.hpp"

namespace rackside {
namespace {

constexpr double usual_focal = 0.87;          // of the width: 60 degrees of view
constexpr std::size_t most_for_library = 30;  // finder patterns; its search is cubic in them
constexpr int library_symbols = 4;
constexpr double sharpening = 1.5;  // 2.5 I - 1.5 G
constexpr int most_doubled = 600;   // px; beyond that, doubling costs more than it gives

enum class Way { Soft, Sharp, InPairs, Blurred, LibrarySharpened, LibraryDoubled };
constexpr std::array ways{
    Way::Soft, Way::Sharp, Way::InPairs, Way::Blurred, Way::LibrarySharpened, Way::LibraryDoubled};

// One frame's work, in the pixels of the aiming box.
class Attempt {
 public:
  Attempt(GreyImage picture, double focal, Point aim, const TimeLeft& time_left)
      : picture_(std::move(picture)),
        solver_(as_plane(picture_), focal, aim),
        aim_(aim),
        time_left_(time_left) {}

  [[nodiscard]] bool found() const { return !sightings_.empty(); }
  [[nodiscard]] const std::vector<Sighting>& sightings() const { return sightings_; }
  [[nodiscard]] const SymbolSolver& solver() const { return solver_; }

  void solve(Look look) {
    for (const Solved& solved : solver_.look(look, time_left_))
      sightings_.push_back({solved.code, solved.corners});
  }

  void go(Way way) {
    switch (way) {
      case Way::Soft: return solve(Look::Soft);
      case Way::Sharp: return solve(Look::Sharp);
      case Way::InPairs: return solve(Look::InPairs);
      case Way::Blurred: return solve(Look::Blurred);
      case Way::LibrarySharpened:
        return ask_in_time(as_grey(sharpened(as_plane(picture_), sharpening, 1.5)), 1);
      case Way::LibraryDoubled:
        if (std::max(picture_.width, picture_.height) <= most_doubled)
          ask_in_time(doubled(picture_), 2);
    }
  }

  void ask_library() { ask_library(picture_, 1); }

 private:
  // Preparing the picture took its time.
  void ask_in_time(const GreyImage& picture, int scale) {
    if (time_left_()) ask_library(picture, scale);
  }

  // A picture full of labels would hold the library up: it then gets what is nearest to the aim.
  void ask_library(const GreyImage& picture, int scale) {
    if (solver_.marks().size() <= most_for_library)
      return add(library_pass(picture, library_symbols), 0, 0, scale);
    const int side = std::min({picture.width, picture.height, nearest_reach() * scale});
    const auto start = [&](double middle, int extent) {
      return std::clamp(static_cast<int>(middle * scale) - side / 2, 0, extent - side);
    };
    const int left = start(aim_.x, picture.width), top = start(aim_.y, picture.height);
    add(library_pass(cut_out(picture, left, top, side, side), library_symbols), left, top, scale);
  }

  // Wide enough for the symbol nearest to the aim, by the size of its finder patterns.
  [[nodiscard]] int nearest_reach() const {
    const auto& marks = solver_.marks();
    const auto nearest = std::ranges::min_element(
        marks, {}, [&](const FinderMark& mark) { return distance_squared(mark.middle, aim_); });
    return static_cast<int>(10 * std::max(nearest->across, nearest->down));
  }

  void add(std::vector<Sighting> more, int left, int top, int scale) {
    for (Sighting& sighting : more) {
      for (Point& corner : sighting.corners)
        corner = {(corner.x + left) / scale, (corner.y + top) / scale};
      sightings_.push_back(std::move(sighting));
    }
  }

  GreyImage picture_;
  SymbolSolver solver_;
  Point aim_;
  const TimeLeft& time_left_;
  std::vector<Sighting> sightings_;
};

Quadrilateral moved(Quadrilateral corners, const AimBox& box) {
  for (Point& corner : corners) corner = {corner.x + box.left, corner.y + box.top};
  return corners;
}

// Print and boards fit a grid up to 0.63, symbols from 0.65 on.
constexpr float surely_symbol = 0.64f;

std::optional<Guidance> guidance_from(const SymbolSolver& solver) {
  if (solver.unread() && solver.unread()->fit > surely_symbol)
    return guidance_for(measure(solver.plane(), *solver.unread()));
  for (const FinderMark& mark : solver.marks())
    if (const auto guidance = guidance_for_lone(mark, measure(solver.plane(), mark)))
      return guidance;
  return std::nullopt;
}

Reading report(const Attempt& attempt, const AimBox& box, bool finished) {
  Reading reading;
  reading.finished = finished;
  for (const Sighting& sighting : attempt.sightings())
    reading.sightings.push_back({sighting.code, moved(sighting.corners, box)});
  std::ranges::stable_sort(reading.sightings, {}, [&](const Sighting& sighting) {
    return distance_squared(sighting.centre(), box.middle());
  });
  if (const auto& unread = attempt.solver().unread())
    reading.unread.push_back(moved(unread->shape.corners, box));
  if (reading.sightings.empty()) reading.guidance = guidance_from(attempt.solver());
  return reading;
}

}  // namespace

std::optional<Code> Reading::code() const {
  for (const Sighting& sighting : sightings)
    if (sighting.code) return *sighting.code;
  return std::nullopt;
}

int Reading::our_codes() const {
  std::set<Code> codes;
  for (const Sighting& sighting : sightings)
    if (sighting.code) codes.insert(*sighting.code);
  return static_cast<int>(codes.size());
}

Reading FrameReader::read(const GreyImage& frame, const Aim& aim, const TimeLeft& time_left) {
  if (frame.width < 2 || frame.height < 2) return {};
  const AimBox box = aim_box(aim, frame.width, frame.height);
  Attempt attempt(cut_out(frame, box.left, box.top, box.width, box.height),
                  usual_focal * frame.width, {box.width / 2.0, box.height / 2.0}, time_left);
  // Where one frame's time does not reach round all ways, the one whose turn it is goes first.
  std::size_t tried = 0;
  const auto next = [&] {
    ++tried;
    attempt.go(ways[std::exchange(turn_, (turn_ + 1) % ways.size())]);
  };
  if (cut_short_) next();
  if (!attempt.found()) attempt.solve(Look::Plain);
  if (!attempt.found()) attempt.ask_library();
  while (tried < ways.size() && !attempt.found() && time_left()) next();
  cut_short_ = !attempt.found() && !time_left();
  return report(attempt, box, !cut_short_);
}

}  // namespace rackside
