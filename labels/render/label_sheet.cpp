#include "labels/render/label_sheet.hpp"

#include <fmt/format.h>

#include <cmath>
#include <map>

#include "labels/label/arrange.hpp"
#include "labels/render/paint.hpp"

namespace rackside {
namespace {

Result<void> check_offset(const Stock& stock, const PrintOffset& offset) {
  const Box first = cell_box(stock, 0);
  const Box last = cell_box(stock, stock.cells() - 1);
  // A sheet whose labels reach the page's edge may still be moved by what a printer is beside.
  constexpr double spare = 2.0;
  const bool on_page = std::isfinite(offset.right) && std::isfinite(offset.down) &&
                       first.x + offset.right >= -spare && first.y + offset.down >= -spare &&
                       last.x + last.width + offset.right <= stock.page_width + spare &&
                       last.y + last.height + offset.down <= stock.page_height + spare;
  if (on_page) return {};
  return failure(ErrorKind::BadInput,
                 fmt::format("An offset of {:g} and {:g} mm moves labels off the page. Nothing was "
                             "printed.",
                             offset.right, offset.down));
}

void paint_page(cairo_t* canvas, const LabelSheet& sheet, int page, const PangoText& text) {
  for (const PlannedLabel& label : sheet.labels) {
    if (label.place.page != page) continue;
    const Box box = box_of(sheet, label);
    if (sheet.stock.cut_lines) paint_cut_lines(canvas, box);
    paint_label(canvas, label.picture, label.symbol, box, sheet.resolution, text);
  }
}

}  // namespace

Result<LabelSheet> plan_sheet(const std::vector<LabelContent>& contents,
                              const SheetSettings& settings, const TextRuler& ruler) {
  const Stock& stock = settings.stock;
  if (contents.empty())
    return failure(ErrorKind::BadInput, "There is no tub to print a label for.");
  if (auto fits = check_offset(stock, settings.offset); !fits) return tl::unexpected(fits.error());
  const auto places = places_for(stock, static_cast<int>(contents.size()), settings.first_cell);
  if (!places) return tl::unexpected(places.error());
  LabelSheet sheet{stock, settings.resolution, settings.offset, {}};
  sheet.labels.reserve(contents.size());
  for (std::size_t i = 0; i < contents.size(); ++i) {
    auto picture =
        arrange(contents[i], stock.cell_width, stock.cell_height, settings.resolution, ruler);
    if (!picture) return tl::unexpected(picture.error());
    Symbol symbol = make_symbol(contents[i].code, picture->symbol.size.version);
    sheet.labels.push_back({contents[i], *std::move(picture), std::move(symbol), (*places)[i]});
  }
  return sheet;
}

Box box_of(const LabelSheet& sheet, const PlannedLabel& label) {
  Box box = cell_box(sheet.stock, label.place.cell);
  box.x += sheet.offset.right;
  box.y += sheet.offset.down;
  return box;
}

Pages pages_of(const LabelSheet& sheet, const PangoText& text) {
  return {sheet.stock.page_width, sheet.stock.page_height, sheet.page_count(),
          [&sheet, &text](cairo_t* canvas, int page) { paint_page(canvas, sheet, page, text); }};
}

std::string what_was_left_out(const LabelSheet& sheet) {
  std::map<std::string, int> counts;
  for (const PlannedLabel& label : sheet.labels)
    for (const std::string& part : label.picture.left_out) ++counts[part];
  std::string list;
  for (const auto& [part, count] : counts)
    list += fmt::format("{}{} ({} label{})", list.empty() ? "" : ", ", part, count,
                        count == 1 ? "" : "s");
  return list;
}

}  // namespace rackside
