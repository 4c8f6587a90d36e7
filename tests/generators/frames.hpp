#pragma once
// Synthetic camera frames with one label in them, from physical quantities and a seed.
//
// A pinhole camera of 60 degrees horizontal view looks at a label that lies on a plane or around a
// cylinder, tilted about a random axis and turned at random in the picture. Each pixel averages
// 3 x 3 rays. Then, in this order: illumination falls off across the label, glare saturates,
// the lens blurs (Gaussian), the hand moves (box along a random direction), the sensor adds
// Gaussian noise and rounds to 0..255. Everything not set is absent, but for a sensor noise of 2
// levels that every camera has. The same scene and seed give the same frame.

#include <array>

#include "labels/reader/grey_image.hpp"
#include "labels/reader/geometry.hpp"
#include "tests/generators/symbols.hpp"

namespace rackside::tests {

struct Scene {
  int width = 640;
  int height = 480;
  int version = 1;       // of the symbol: 21 or 25 modules a side
  double module_px = 4;  // at the label's middle, before tilting
  double module_mm = 0.5;
  double tilt = 0;         // degrees between the label's normal and the line of sight
  double radius_mm = 0;    // of the cylinder, its axis anyhow to the symbol; 0 is flat
  double blur = 0;         // sigma, px
  double motion = 0;       // length of the smear, px
  double noise = 2;        // sigma, grey levels
  double glare = 0;        // diameter of a saturated disc on the symbol, parts of its side
  double contrast = 160;   // grey levels between paper and ink
  double gain = 0;         // how far ink spreads beyond each edge, modules
  double shading = 0;      // part of the light lost from one end of the label to the other
  double clutter = 1;      // 0..1: how much print, boards, wire surround the label; 0: paper
  double off_middle = 20;  // px: the label's middle is at most so far from the frame's, each way
};

struct Picture {
  GreyImage image;
  std::array<Point, 4> corners;  // of the symbol, clockwise from its own top left
};

/// A frame that shows `modules` (placed, turned and disturbed at random as `scene` says).
[[nodiscard]] Picture photograph(const Modules& modules, const Scene& scene, Random& random);

/// Steadily moving hands: the same label in `count` frames, each turned a little and moved by
/// fractions of a pixel against the one before, with noise and motion of its own.
[[nodiscard]] std::vector<Picture> film(const Modules& modules, const Scene& scene, int count,
                                        Random& random);

}  // namespace rackside::tests
