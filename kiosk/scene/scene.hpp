#pragma once
// One picture of the kiosk as a list of things to draw and places to touch. A value: two scenes
// that compare equal look the same, so an unchanged screen is not drawn again.

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "kiosk/model/intent.hpp"
#include "kiosk/scene/geometry.hpp"
#include "kiosk/scene/mark.hpp"
#include "kiosk/scene/palette.hpp"
#include "kiosk/scene/text_metrics.hpp"

namespace rackside::kiosk {

/// A filled rectangle; hairlines are thin ones.
struct Fill {
  Box box;
  Ink ink = Ink::Line;
  bool operator==(const Fill&) const = default;
};

/// One line of text. `box` is where it lands, `within` what it must not leave.
struct Text {
  Box box;
  Box within;
  std::string text;
  Style style;
  Ink ink = Ink::Text;
  Ink ground = Ink::Paper;  // what it stands on, for its contrast
  bool operator==(const Text&) const = default;
};

/// A smooth line or filled shape.
struct Path {
  std::vector<Spot> points;
  bool closed = false;
  bool filled = false;
  double width = 1;  // of the line, pixels
  Ink ink = Ink::Text;
  bool operator==(const Path&) const = default;
};

/// A mark in its square.
struct MarkAt {
  Mark mark = Mark::None;
  Box box;
  double width = 1;  // of its strokes, pixels
  Ink ink = Ink::Text;
  bool operator==(const MarkAt&) const = default;
};

/// The camera's picture, by its number: a scene holds no pixels.
struct LivePicture {
  Box box;
  std::uint64_t number = 0;
  bool operator==(const LivePicture&) const = default;
};

using Item = std::variant<Fill, Text, Path, MarkAt, LivePicture>;

/// A place that acts when it is touched. `word` names it for tests and for people who cannot see
/// it; targets are listed in the order in which the arrow keys walk them.
struct Target {
  Box box;
  std::string word;
  Intent intent;
  bool operator==(const Target&) const = default;
};

/// A mark whose record was made just now.
struct LandingMark {
  EventId event;
  MarkAt mark;
  bool operator==(const LandingMark&) const = default;
};

struct Scene {
  std::vector<Item> items;
  std::vector<Target> targets;
  std::optional<LandingMark> landing;

  bool operator==(const Scene&) const = default;
};

}  // namespace rackside::kiosk
