#include "kiosk/scene/damage.hpp"

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>
#include <functional>

namespace rackside::kiosk {
namespace {

constexpr int square = 32;  // pixels

// A number for what is drawn; two different things have the same one once in 2^64.
class Print {
 public:
  Print& add(std::uint64_t value) {
    print_ = (print_ ^ value) * 0x9E3779B97F4A7C15u;
    print_ ^= print_ >> 29;
    return *this;
  }
  Print& add(double value) { return add(std::bit_cast<std::uint64_t>(value)); }
  Print& add(const Box& box) { return add(box.x).add(box.y).add(box.width).add(box.height); }
  template <class Enum>
  requires std::is_enum_v<Enum> Print& add(Enum value) {
    return add(static_cast<std::uint64_t>(value));
  }
  [[nodiscard]] std::uint64_t value() const { return print_; }

 private:
  std::uint64_t print_ = 0;
};

struct PrintOf {
  std::uint64_t operator()(const Fill& fill) const {
    return Print{}.add(std::uint64_t{1}).add(fill.box).add(fill.ink).value();
  }
  std::uint64_t operator()(const Text& text) const {
    return Print{}
        .add(std::uint64_t{2})
        .add(text.box)
        .add(std::hash<std::string>{}(text.text))
        .add(text.style.face)
        .add(static_cast<std::uint64_t>(text.style.pixels))
        .add(text.ink)
        .value();
  }
  std::uint64_t operator()(const Path& path) const {
    Print print;
    print.add(std::uint64_t{3}).add(path.width).add(path.ink);
    print.add(static_cast<std::uint64_t>(path.closed)).add(static_cast<std::uint64_t>(path.filled));
    for (const Spot& point : path.points) print.add(point.x).add(point.y);
    return print.value();
  }
  std::uint64_t operator()(const MarkAt& mark) const {
    return Print{}
        .add(std::uint64_t{4})
        .add(mark.mark)
        .add(mark.box)
        .add(mark.width)
        .add(mark.ink)
        .value();
  }
  std::uint64_t operator()(const LivePicture& picture) const {
    return Print{}.add(std::uint64_t{5}).add(picture.box).add(picture.number).value();
  }
};

struct ReachOf {
  Box operator()(const Fill& fill) const { return fill.box.inset(-1); }
  // Slanted and accented letters may stand out of their line a little.
  Box operator()(const Text& text) const { return text.box.inset(-0.25 * text.style.pixels); }
  Box operator()(const Path& path) const {
    if (path.points.empty()) return {};
    const auto [left, right] = std::ranges::minmax(path.points, {}, &Spot::x);
    const auto [top, bottom] = std::ranges::minmax(path.points, {}, &Spot::y);
    return Box{left.x, top.y, right.x - left.x, bottom.y - top.y}.inset(-path.width - 3);
  }
  Box operator()(const MarkAt& mark) const { return mark.box.inset(-2); }
  Box operator()(const LivePicture& picture) const { return picture.box.inset(-1); }
};

// The panel in squares, each with the print of all that reaches into it.
struct Grid {
  int columns;
  int rows;
  std::vector<std::uint64_t> squares;

  Grid(const Scene& scene, const Panel& panel)
      : columns((panel.width + square - 1) / square),
        rows((panel.height + square - 1) / square),
        squares(static_cast<std::size_t>(columns * rows)) {
    for (const Item& item : scene.items) add(item);
  }

  void add(const Item& item) {
    const Box reach = reach_of(item);
    const std::uint64_t print = std::visit(PrintOf{}, item);
    const int last_row = index(reach.bottom(), rows - 1);
    const int last_column = index(reach.right(), columns - 1);
    for (int row = index(reach.y, rows - 1); row <= last_row; ++row)
      for (int column = index(reach.x, columns - 1); column <= last_column; ++column) {
        auto& kept = squares[static_cast<std::size_t>(row * columns + column)];
        kept = Print{}.add(kept).add(print).value();
      }
  }
  static int index(double pixel, int last) {
    return std::clamp(static_cast<int>(std::floor(pixel / square)), 0, last);
  }
};

// Adds a run of squares in a row; one that continues the run above makes it taller.
void add_run(std::vector<Box>& boxes, const Box& run) {
  for (Box& above : boxes)
    if (above.x == run.x && above.width == run.width && above.bottom() == run.y) {
      above.height += run.height;
      return;
    }
  boxes.push_back(run);
}

}  // namespace

Box reach_of(const Item& item) { return std::visit(ReachOf{}, item); }

std::vector<Box> damage(const Scene& before, const Scene& after, const Panel& panel) {
  const Grid old(before, panel);
  const Grid now(after, panel);
  std::vector<Box> boxes;
  const auto differs = [&](int row, int column) {
    const auto at = static_cast<std::size_t>(row * now.columns + column);
    return old.squares[at] != now.squares[at];
  };
  for (int row = 0; row < now.rows; ++row)
    for (int column = 0; column < now.columns; ++column) {
      const int first = column;
      while (column < now.columns && differs(row, column)) ++column;
      if (column == first) continue;
      const double x = first * square;
      const double y = row * square;
      add_run(boxes, {x, y, std::min<double>(column * square, panel.width) - x,
                      std::min<double>(y + square, panel.height) - y});
    }
  return boxes;
}

}  // namespace rackside::kiosk
