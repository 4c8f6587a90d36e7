#pragma once
// Drawing on a canvas whose unit is the millimetre.

#include <cairo.h>

#include "labels/label/label_picture.hpp"
#include "labels/render/pango_text.hpp"
#include "labels/sheet/stock.hpp"

namespace rackside {

/// The nearest whole number of printer dots from the page's edge, in millimetres.
[[nodiscard]] double on_dot(double millimetres, Resolution resolution);

/// The dark modules, black, the symbol's own corner (without quiet zone) at x, y.
void paint_symbol(cairo_t* canvas, const Symbol& symbol, double x, double y, double module);

/// A triangle with an exclamation mark.
void paint_warning(cairo_t* canvas, const PlacedWarning& warning, double x, double y);

/// A label in `cell`. Its symbol is moved by less than a dot, onto the dots of the printer.
void paint_label(cairo_t* canvas, const LabelPicture& picture, const Symbol& symbol,
                 const Box& cell, Resolution resolution, const PangoText& text);

/// Thin lines around `cell`.
void paint_cut_lines(cairo_t* canvas, const Box& cell);

}  // namespace rackside
