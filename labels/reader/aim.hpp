#pragma once

namespace rackside {

/// The part of the picture that is read: a square, in parts of the frame's height.
struct Aim {
  double x = 0.5;     // of its middle, parts of the width
  double y = 0.5;     // parts of the height
  double side = 1.0;  // parts of the height
  bool operator==(const Aim&) const = default;
};

}  // namespace rackside
