#pragma once
// Reads a camera's frames one after the other, each within a time it is given.

#include <optional>
#include <vector>

#include "labels/reader/aim_box.hpp"
#include "labels/reader/sighting.hpp"
#include "labels/reader/symbol_solver.hpp"
#include "labels/reader/symptoms.hpp"

namespace rackside {

struct Reading {
  std::vector<Sighting> sightings;    // nearest to the aim first, corners in the frame
  std::vector<Quadrilateral> unread;  // symbols that are there but were not read
  std::optional<Guidance> guidance;   // when nothing was read
  bool finished = true;               // false: time ran out before every way was tried

  /// Our code nearest to the aim.
  [[nodiscard]] std::optional<Code> code() const;
  /// Different codes of ours in view.
  [[nodiscard]] int our_codes() const;
};

/// A frame first gets the cheap ways; the dearer ones take turns over the frames as time allows,
/// so that a hard label in a steady hand has met all of them within a few frames.
class FrameReader {
 public:
  [[nodiscard]] Reading read(const GreyImage& frame, const Aim& aim, const TimeLeft& time_left);

 private:
  std::size_t turn_ = 0;
  bool cut_short_ = false;  // the last frame's time ran out
};

}  // namespace rackside
