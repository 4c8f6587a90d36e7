#pragma once
// Places on the panel, in pixels; y grows downwards.

namespace rackside::kiosk {

struct Spot {
  double x = 0;
  double y = 0;
  bool operator==(const Spot&) const = default;
};

struct Box {
  double x = 0;
  double y = 0;
  double width = 0;
  double height = 0;

  [[nodiscard]] double right() const { return x + width; }
  [[nodiscard]] double bottom() const { return y + height; }
  [[nodiscard]] Spot middle() const { return {x + width / 2, y + height / 2}; }
  [[nodiscard]] bool holds(Spot spot) const {
    return spot.x >= x && spot.x < right() && spot.y >= y && spot.y < bottom();
  }
  /// Whether `inner` lies inside, with `slack` pixels forgiven.
  [[nodiscard]] bool holds(const Box& inner, double slack = 0.5) const {
    return inner.x >= x - slack && inner.y >= y - slack && inner.right() <= right() + slack &&
           inner.bottom() <= bottom() + slack;
  }
  [[nodiscard]] bool meets(const Box& other) const {
    return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
  }
  [[nodiscard]] Box inset(double by) const {
    return {x + by, y + by, width - 2 * by, height - 2 * by};
  }
  /// Cuts `size` pixels off one side; the piece is returned and this box keeps the rest.
  Box take_top(double size) {
    const Box piece{x, y, width, size};
    y += size;
    height -= size;
    return piece;
  }
  Box take_bottom(double size) {
    height -= size;
    return {x, bottom(), width, size};
  }
  Box take_left(double size) {
    const Box piece{x, y, size, height};
    x += size;
    width -= size;
    return piece;
  }
  Box take_right(double size) {
    width -= size;
    return {right(), y, size, height};
  }

  bool operator==(const Box&) const = default;
};

}  // namespace rackside::kiosk
