#include "kiosk/scene/mark_drawings.hpp"

#include <cmath>
#include <numbers>

namespace rackside::kiosk {
namespace {

// An arc around `middle` from one angle to another, in turns, clockwise from the right.
std::vector<Spot> arc(Spot middle, double radius_x, double radius_y, double from, double to) {
  constexpr int steps = 24;
  std::vector<Spot> points;
  for (int i = 0; i <= steps; ++i) {
    const double angle = 2 * std::numbers::pi * (from + (to - from) * i / steps);
    points.push_back(
        {middle.x + radius_x * std::cos(angle), middle.y + radius_y * std::sin(angle)});
  }
  return points;
}

Stroke line(std::vector<Spot> points) { return {std::move(points), false, false}; }
Stroke ring(Spot middle, double radius_x, double radius_y) {
  return {arc(middle, radius_x, radius_y, 0, 1), true, false};
}
Stroke dot(Spot middle, double radius) { return {arc(middle, radius, radius, 0, 1), true, true}; }
Stroke cup() { return line(arc({0.5, 0.42}, 0.34, 0.42, 0, 0.5)); }
Stroke tub() { return line({{0.18, 0.4}, {0.24, 0.86}, {0.76, 0.86}, {0.82, 0.4}}); }

Drawing legs(double y, double reach) {
  Drawing drawing;
  for (const double x : {0.26, 0.42, 0.58, 0.74})
    drawing.push_back(line(
        {{0.5 + (x - 0.5) * 0.6, y}, {x, y - reach * 0.6}, {0.5 + (x - 0.5) * 1.7, y - reach}}));
  return drawing;
}

Drawing with(Drawing drawing, Drawing more) {
  for (Stroke& stroke : more) drawing.push_back(std::move(stroke));
  return drawing;
}

// The two halves of the body, seen from above; the hind one of this width and length.
Drawing abdomen(double half_width, double half_length) {
  return {ring({0.5, 0.16}, 0.15, 0.12), ring({0.5, 0.62}, half_width, half_length * 0.94)};
}

// Legs that lie flat, two on each side.
Drawing flat_legs() {
  Drawing drawing;
  for (const double side : {-1.0, 1.0})
    for (const double drop : {0.0, 0.16})
      drawing.push_back(line({{0.5 + side * 0.22, 0.56 + drop},
                              {0.5 + side * 0.36, 0.44 + drop},
                              {0.5 + side * 0.48, 0.74 + drop}}));
  return drawing;
}

Drawing rays() {
  Drawing drawing;
  for (const double side : {-1.0, 1.0})
    for (const double rise : {-1.0, 0.0, 1.0})
      drawing.push_back(
          line({{0.5 + side * 0.34, 0.62 + rise * 0.2}, {0.5 + side * 0.48, 0.62 + rise * 0.28}}));
  return drawing;
}

}  // namespace

Drawing drawing_of(Mark mark) {
  switch (mark) {
    case Mark::None: return {};
    case Mark::Taken: return {cup(), dot({0.5, 0.56}, 0.12)};
    case Mark::Refused: return {cup(), line({{0.12, 0.42}, {0.88, 0.42}}), dot({0.5, 0.2}, 0.12)};
    case Mark::Left: return {line(arc({0.36, 0.42}, 0.24, 0.42, 0, 0.5)), dot({0.82, 0.74}, 0.12)};
    case Mark::PreyOut:
      return {cup(), dot({0.5, 0.5}, 0.1), line({{0.5, 0.34}, {0.5, 0.06}}),
              line({{0.36, 0.2}, {0.5, 0.06}, {0.64, 0.2}})};
    case Mark::Shed: return with({line(arc({0.5, 0.66}, 0.22, 0.22, -0.18, 0.68))}, legs(0.5, 0.4));
    case Mark::Moult:
      return with({line(arc({0.5, 0.7}, 0.2, 0.2, -0.18, 0.68)), dot({0.5, 0.7}, 0.1)},
                  legs(0.52, 0.42));
    case Mark::OnItsBack:
      return with({ring({0.5, 0.74}, 0.26, 0.14), line({{0.1, 0.92}, {0.9, 0.92}})},
                  legs(0.62, 0.5));
    case Mark::Looked:
      return {line(arc({0.5, 0.72}, 0.48, 0.42, 0.58, 0.92)),
              line(arc({0.5, 0.28}, 0.48, 0.42, 0.08, 0.42)), dot({0.5, 0.5}, 0.13)};
    case Mark::Sign:
      return {line({{0.28, 0.92}, {0.28, 0.08}}),
              Stroke{{{0.28, 0.1}, {0.86, 0.28}, {0.28, 0.48}}, true, true}};
    case Mark::Dark: return with(abdomen(0.3, 0.36), {dot({0.5, 0.62}, 0.15)});
    case Mark::Plump: return abdomen(0.44, 0.32);
    case Mark::Slow: return with({ring({0.5, 0.66}, 0.22, 0.14)}, flat_legs());
    case Mark::Sealed:
      return {line({{0.12, 0.9}, {0.12, 0.5}}),   line(arc({0.5, 0.5}, 0.38, 0.4, 0.5, 1)),
              line({{0.88, 0.5}, {0.88, 0.9}}),   line({{0.14, 0.78}, {0.84, 0.38}}),
              line({{0.16, 0.38}, {0.86, 0.78}}), line({{0.5, 0.12}, {0.5, 0.88}})};
    case Mark::Long:
      return {ring({0.5, 0.5}, 0.12, 0.17), line({{0.42, 0.34}, {0.34, 0.04}}),
              line({{0.58, 0.34}, {0.66, 0.04}}), line({{0.42, 0.66}, {0.34, 0.96}}),
              line({{0.58, 0.66}, {0.66, 0.96}})};
    case Mark::Bright: return with(abdomen(0.2, 0.34), rays());
    case Mark::Active:
      return {line(arc({0.28, 0.6}, 0.22, 0.3, 0.5, 1)), line({{0.06, 0.6}, {0.06, 0.9}}),
              line({{0.5, 0.6}, {0.5, 0.9}}), line({{0.28, 0.74}, {0.94, 0.74}}),
              line({{0.78, 0.58}, {0.94, 0.74}, {0.78, 0.9}})};
    case Mark::Thin:
      return {ring({0.5, 0.2}, 0.15, 0.13),
              {{{0.5, 0.36},
                {0.66, 0.44},
                {0.58, 0.56},
                {0.64, 0.68},
                {0.56, 0.8},
                {0.5, 0.94},
                {0.44, 0.8},
                {0.36, 0.68},
                {0.42, 0.56},
                {0.34, 0.44}},
               true,
               false}};
    case Mark::Misted:
      return {line({{0.24, 0.14}, {0.18, 0.42}}), line({{0.52, 0.3}, {0.46, 0.58}}),
              line({{0.8, 0.14}, {0.74, 0.42}}), line({{0.3, 0.62}, {0.24, 0.88}}),
              line({{0.74, 0.62}, {0.68, 0.88}})};
    case Mark::Water:
      return {line(arc({0.5, 0.5}, 0.42, 0.36, 0, 0.5)),
              line({{0.1, 0.5}, {0.3, 0.58}, {0.5, 0.5}, {0.7, 0.58}, {0.9, 0.5}})};
    case Mark::Measured:
      return {line({{0.08, 0.5}, {0.92, 0.5}}), line({{0.08, 0.28}, {0.08, 0.72}}),
              line({{0.92, 0.28}, {0.92, 0.72}}), line({{0.5, 0.38}, {0.5, 0.62}})};
    case Mark::Sexed:
      return {line(arc({0.32, 0.42}, 0.16, 0.3, 0, -0.5)),
              line(arc({0.68, 0.42}, 0.16, 0.3, 0, -0.5)),
              line({{0.16, 0.42}, {0.16, 0.78}, {0.84, 0.78}, {0.84, 0.42}}),
              line({{0.48, 0.42}, {0.52, 0.42}})};
    case Mark::Housed: return {tub(), line({{0.1, 0.4}, {0.9, 0.4}})};
    case Mark::Arrived:
      return {tub(), line({{0.5, 0.06}, {0.5, 0.66}}),
              line({{0.36, 0.5}, {0.5, 0.66}, {0.64, 0.5}})};
    case Mark::Gone:
      return {tub(), line({{0.5, 0.7}, {0.5, 0.08}}),
              line({{0.36, 0.24}, {0.5, 0.08}, {0.64, 0.24}})};
    case Mark::Died: return {line({{0.5, 0.06}, {0.5, 0.94}}), line({{0.24, 0.32}, {0.76, 0.32}})};
    case Mark::Paired: return {ring({0.36, 0.5}, 0.26, 0.26), ring({0.64, 0.5}, 0.26, 0.26)};
    case Mark::Sac:
      return {ring({0.5, 0.5}, 0.38, 0.38), line({{0.2, 0.36}, {0.8, 0.64}}),
              line({{0.2, 0.64}, {0.8, 0.36}}), line({{0.5, 0.12}, {0.5, 0.88}})};
    case Mark::Written:
      return {line({{0.12, 0.26}, {0.88, 0.26}}), line({{0.12, 0.5}, {0.88, 0.5}}),
              line({{0.12, 0.74}, {0.58, 0.74}})};
    case Mark::Climate:
      return {line({{0.5, 0.08}, {0.5, 0.6}}), dot({0.5, 0.76}, 0.16),
              line({{0.62, 0.2}, {0.78, 0.2}}), line({{0.62, 0.36}, {0.78, 0.36}})};
    case Mark::Person:
      return {ring({0.5, 0.28}, 0.17, 0.19), line(arc({0.5, 0.92}, 0.36, 0.36, 0.5, 1))};
    case Mark::Badge:
      return {line({{0.16, 0.3}, {0.84, 0.3}, {0.84, 0.92}, {0.16, 0.92}, {0.16, 0.3}}),
              line({{0.42, 0.3}, {0.42, 0.08}, {0.58, 0.08}, {0.58, 0.3}}),
              line({{0.3, 0.54}, {0.7, 0.54}}), line({{0.3, 0.74}, {0.56, 0.74}})};
    case Mark::Away:
      return {line({{0.08, 0.34}, {0.92, 0.34}, {0.92, 0.88}, {0.08, 0.88}, {0.08, 0.34}}),
              line({{0.34, 0.34}, {0.34, 0.14}, {0.66, 0.14}, {0.66, 0.34}}),
              line({{0.26, 0.34}, {0.26, 0.88}}), line({{0.74, 0.34}, {0.74, 0.88}})};
    case Mark::TakenBack:
      return {line(arc({0.52, 0.54}, 0.34, 0.34, 0.25, 1.0 - 0.36)),
              line({{0.12, 0.12}, {0.2, 0.36}, {0.44, 0.3}})};
  }
  return {};
}

}  // namespace rackside::kiosk
