#pragma once
// What can hurt somebody in any rack room, as a block of small print on a sheet that hangs there.

#include <cairo.h>

#include <string>
#include <vector>

#include "labels/render/pango_text.hpp"
#include "labels/sheet/stock.hpp"

namespace rackside {

struct CautionBlock {
  double size = 0;  // of letters, millimetres
  std::vector<std::string> lines;
};

/// The general cautions broken into lines, in the largest letters of which all have room in `box`.
[[nodiscard]] CautionBlock fit_cautions(const Box& box, const PangoText& text);

void paint_cautions(cairo_t* canvas, const Box& box, const PangoText& text);

}  // namespace rackside
