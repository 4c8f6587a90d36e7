#pragma once
// A page that shows where a printer really prints: rulers from the paper's edges and the outlines
// of the cells.

#include "labels/render/label_sheet.hpp"

namespace rackside {

/// One page for this stock, moved by the offset in `settings`. `text` must outlive it.
[[nodiscard]] Pages calibration_page(const SheetSettings& settings, const PangoText& text);

}  // namespace rackside
