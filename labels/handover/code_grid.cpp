// Symbols side by side on a flowing page.

#include <algorithm>

#include "labels/handover/page_flow.hpp"
#include "labels/render/paint.hpp"

namespace rackside {
namespace {

constexpr double letters = 3.4;
constexpr double margin = 14;

double line_height() { return letters * line_ems; }

}  // namespace

void FlowWriter::cell(const Cell& cell, const SymbolSize& size, double x, double width) {
  FlowPage& page = flow_.pages.back();
  const double quiet = quiet_zone * size.module;
  page.symbols.push_back(
      {cell.code, size, on_dot(x + quiet, resolution_), on_dot(y_ + quiet, resolution_)});
  double y = y_ + size.side();
  for (const std::string& words : cell.lines)
    for (const std::string& line : wrap(Face::Text, letters, width - 3, words)) {
      page.texts.push_back({Face::Text, letters, x + quiet, y + baseline_ems * letters, line});
      y += line_height();
    }
}

void FlowWriter::codes(const std::vector<Cell>& cells, int columns, double room) {
  const auto size = best_symbol(room, resolution_);
  if (!size) return;
  const double width = text_width() / columns;
  const auto height_of = [&](const Cell& cell) {
    double height = size->side();
    for (const std::string& words : cell.lines)
      height +=
          line_height() * static_cast<double>(wrap(Face::Text, letters, width - 3, words).size());
    return height + 2;
  };
  for (std::size_t begin = 0; begin < cells.size(); begin += static_cast<std::size_t>(columns)) {
    const std::size_t end = std::min(cells.size(), begin + static_cast<std::size_t>(columns));
    double height = 0;
    for (std::size_t i = begin; i < end; ++i) height = std::max(height, height_of(cells[i]));
    make_room(height);
    for (std::size_t i = begin; i < end; ++i)
      cell(cells[i], *size, margin + width * static_cast<double>(i - begin), width);
    y_ += height;
  }
}

}  // namespace rackside
