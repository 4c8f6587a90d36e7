#include "labels/calibration/calibration_page.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace rackside {
namespace {

constexpr double line_width = 0.15;
constexpr double figures = 2.4;  // size of letters, millimetres

enum class Along { Across, Down };

// Tick marks every millimetre, measured from the paper's edge; `at` is where the ruler lies in the
// other direction.
class Ruler {
 public:
  Ruler(cairo_t* canvas, const PangoText& text, Along along, double at)
      : canvas_(canvas), text_(text), along_(along), at_(at) {}

  /// `crossing` is where the other ruler lies: no figures there.
  void draw(double length, double crossing) const {
    line(0, 0, length, 0);
    for (int tick = 0; tick <= static_cast<int>(std::floor(length)); ++tick) {
      line(tick, 0, tick, tick % 10 == 0 ? 4 : tick % 5 == 0 ? 2.6 : 1.4);
      const bool free = tick > 0 && tick < length - 3 && std::abs(tick - crossing - 3) > 6;
      if (tick % 10 == 0 && free) figure(tick);
    }
  }

 private:
  void line(double from, double from_beside, double to, double to_beside) const {
    const auto point = [&](double way, double beside) {
      return along_ == Along::Across ? std::pair{way, at_ + beside} : std::pair{at_ + beside, way};
    };
    const auto [x1, y1] = point(from, from_beside);
    const auto [x2, y2] = point(to, to_beside);
    cairo_move_to(canvas_, x1, y1);
    cairo_line_to(canvas_, x2, y2);
    cairo_stroke(canvas_);
  }

  void figure(int tick) const {
    const std::string words = std::to_string(tick);
    const double half = text_.width(Face::Text, words) * figures / 2;
    const bool across = along_ == Along::Across;
    text_.draw(canvas_, Face::Text, figures, across ? tick - half : at_ + 4.6,
               across ? at_ + 6.6 : tick + figures * 0.35, words);
  }

  cairo_t* canvas_;
  const PangoText& text_;
  Along along_;
  double at_;
};

void draw_cells(cairo_t* canvas, const Stock& stock, const PangoText& text) {
  cairo_set_source_rgb(canvas, 0.55, 0.55, 0.55);
  for (int cell = 0; cell < stock.cells(); ++cell) {
    const Box box = cell_box(stock, cell);
    cairo_rectangle(canvas, box.x, box.y, box.width, box.height);
    cairo_stroke(canvas);
    text.draw(canvas, Face::Text, figures, box.x + 0.8, box.y + figures, std::to_string(cell + 1));
  }
  cairo_set_source_rgb(canvas, 0, 0, 0);
}

void draw_words(cairo_t* canvas, const Stock& stock, const PangoText& text) {
  const std::vector<std::string> lines{
      fmt::format("Calibration of \"{}\"", stock.name),
      "1. On both rulers 10 to 110 must be 100 mm. If not, the printer",
      "    scales the page: choose \"actual size\" or 100 %.",
      "2. Measure from the paper's left edge to the mark 10 of the ruler",
      "    across: 10 minus what you measure is the offset RIGHT.",
      "3. The same from the upper edge, down: the offset DOWN.",
      "4. Hold the page with a label sheet against the light: the boxes",
      "    must lie on the labels. Then keep the offset:",
      fmt::format("    rackside-labels calibrate --sheet {} --remember RIGHT,DOWN", stock.name)};
  constexpr double size = 3.0;
  constexpr double padding = 3;
  double widest = 0;
  for (const std::string& line : lines)
    widest = std::max(widest, text.width(Face::Text, line) * size);
  const double left = stock.page_width / 2 + 16;
  const double top = stock.page_height / 2 + 20;
  const double shrink = std::min(1.0, (stock.page_width - left - 2 * padding) / widest);
  const double height = static_cast<double>(lines.size()) * size * 1.4 * shrink + padding;
  cairo_set_source_rgb(canvas, 1, 1, 1);
  cairo_rectangle(canvas, left - padding, top - padding - size, widest * shrink + 2 * padding,
                  height + padding);
  cairo_fill(canvas);
  cairo_set_source_rgb(canvas, 0, 0, 0);
  double y = top;
  for (const std::string& line : lines) {
    text.draw(canvas, Face::Text, size * shrink, left, y, line);
    y += size * 1.4 * shrink;
  }
}

void draw_page(cairo_t* canvas, const SheetSettings& settings, const PangoText& text) {
  const Stock& stock = settings.stock;
  cairo_translate(canvas, settings.offset.right, settings.offset.down);
  cairo_set_line_width(canvas, line_width);
  draw_cells(canvas, stock, text);
  Ruler(canvas, text, Along::Across, stock.page_height / 2)
      .draw(stock.page_width, stock.page_width / 2);
  Ruler(canvas, text, Along::Down, stock.page_width / 2)
      .draw(stock.page_height, stock.page_height / 2);
  if (stock.shape == StockShape::Sheet) draw_words(canvas, stock, text);
}

}  // namespace

Pages calibration_page(const SheetSettings& settings, const PangoText& text) {
  return {settings.stock.page_width, settings.stock.page_height, 1,
          [settings, &text](cairo_t* canvas, int) { draw_page(canvas, settings, text); }};
}

}  // namespace rackside
