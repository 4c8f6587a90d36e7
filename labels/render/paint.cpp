#include "labels/render/paint.hpp"

#include <cmath>

#include "labels/symbol/outline.hpp"

namespace rackside {
namespace {

constexpr double cut_line_width = 0.1;

}  // namespace

double on_dot(double millimetres, Resolution resolution) {
  return std::round(millimetres / resolution.dot()) * resolution.dot();
}

void paint_symbol(cairo_t* canvas, const Symbol& symbol, double x, double y, double module) {
  cairo_new_path(canvas);
  for (const auto& outline : outlines_of(symbol)) {
    for (const SymbolPoint& corner : outline)
      cairo_line_to(canvas, x + corner.x * module, y + corner.y * module);
    cairo_close_path(canvas);
    cairo_new_sub_path(canvas);
  }
  // No grey edges: a picture has exactly the printer's dots.
  cairo_set_antialias(canvas, CAIRO_ANTIALIAS_NONE);
  cairo_fill(canvas);
  cairo_set_antialias(canvas, CAIRO_ANTIALIAS_DEFAULT);
}

void paint_warning(cairo_t* canvas, const PlacedWarning& warning, double x, double y) {
  const double size = warning.size;
  const double line = size * 0.1;
  const double left = x + warning.x + line / 2;
  const double top = y + warning.y + size * 0.08;
  const double bottom = y + warning.y + size * 0.92;
  const double middle = x + warning.x + size / 2;
  cairo_set_line_width(canvas, line);
  cairo_set_line_join(canvas, CAIRO_LINE_JOIN_ROUND);
  cairo_move_to(canvas, middle, top);
  cairo_line_to(canvas, left + size - line, bottom);
  cairo_line_to(canvas, left, bottom);
  cairo_close_path(canvas);
  cairo_stroke(canvas);
  cairo_rectangle(canvas, middle - line / 2, y + warning.y + size * 0.36, line, size * 0.28);
  cairo_rectangle(canvas, middle - line / 2, y + warning.y + size * 0.71, line, line);
  cairo_fill(canvas);
}

void paint_label(cairo_t* canvas, const LabelPicture& picture, const Symbol& symbol,
                 const Box& cell, Resolution resolution, const PangoText& text) {
  cairo_set_source_rgb(canvas, 0, 0, 0);
  const double module = picture.symbol.size.module;
  paint_symbol(canvas, symbol, on_dot(cell.x + picture.symbol.x + quiet_zone * module, resolution),
               on_dot(cell.y + picture.symbol.y + quiet_zone * module, resolution), module);
  if (picture.warning) paint_warning(canvas, *picture.warning, cell.x, cell.y);
  for (const PlacedText& line : picture.texts)
    text.draw(canvas, line.face, line.size, cell.x + line.x, cell.y + line.y, line.text);
}

void paint_cut_lines(cairo_t* canvas, const Box& cell) {
  cairo_set_line_width(canvas, cut_line_width);
  cairo_set_source_rgb(canvas, 0.6, 0.6, 0.6);
  cairo_rectangle(canvas, cell.x, cell.y, cell.width, cell.height);
  cairo_stroke(canvas);
  cairo_set_source_rgb(canvas, 0, 0, 0);
}

}  // namespace rackside
