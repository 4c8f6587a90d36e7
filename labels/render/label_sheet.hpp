#pragma once
// A print run: which label goes into which cell of which page.

#include <vector>

#include "labels/label/label_picture.hpp"
#include "labels/render/pages.hpp"
#include "labels/render/pango_text.hpp"
#include "labels/sheet/stock.hpp"

namespace rackside {

struct PlannedLabel {
  LabelContent content;
  LabelPicture picture;
  Symbol symbol;
  CellPlace place;
};

struct LabelSheet {
  Stock stock;
  Resolution resolution;
  PrintOffset offset;
  std::vector<PlannedLabel> labels;

  [[nodiscard]] int page_count() const { return labels.empty() ? 0 : labels.back().place.page + 1; }
};

struct SheetSettings {
  Stock stock;
  Resolution resolution;
  PrintOffset offset;
  int first_cell = 0;  // from 0
};

/// Every label arranged and placed. Errors: BadInput when there is nothing to print, when the cells
/// are too small for any symbol, when there is no such first cell, or when the offset moves cells
/// off the page.
[[nodiscard]] Result<LabelSheet> plan_sheet(const std::vector<LabelContent>& contents,
                                            const SheetSettings& settings, const TextRuler& ruler);

/// The cell of a label on its page, with the printer's offset.
[[nodiscard]] Box box_of(const LabelSheet& sheet, const PlannedLabel& label);

/// For labels/render/pages.hpp. `sheet` and `text` must outlive what comes back.
[[nodiscard]] Pages pages_of(const LabelSheet& sheet, const PangoText& text);

/// "date (12 labels), end of the species name (1 label)", or empty when everything stands on all.
[[nodiscard]] std::string what_was_left_out(const LabelSheet& sheet);

}  // namespace rackside
