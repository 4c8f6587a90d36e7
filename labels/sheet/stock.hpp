#pragma once
// What labels are printed on: sheets with a grid of cells, and rolls. Kinds of stock are data (see
// stock.toml); this is one of them in memory, and the arithmetic of where its cells are.

#include <string>
#include <vector>

#include "core/values/result.hpp"

namespace rackside {

/// A rectangle on a page, millimetres from the page's top left corner.
struct Box {
  double x = 0;
  double y = 0;
  double width = 0;
  double height = 0;
  bool operator==(const Box&) const = default;
};

enum class StockShape {
  Sheet,  // a page with a grid of cells
  Roll,   // a strip; every label is a page of its own, as long as the cell
};

struct Stock {
  std::string name;   // how it is asked for: "a4-5x13"
  std::string about;  // one line for people
  StockShape shape = StockShape::Sheet;
  double page_width = 0;  // millimetres, all of them
  double page_height = 0;
  int columns = 1;
  int rows = 1;
  double cell_width = 0;
  double cell_height = 0;
  double margin_left = 0;  // from the page's edge to the first cell
  double margin_top = 0;
  double pitch_x = 0;  // from one cell's left edge to the next one's
  double pitch_y = 0;
  bool cut_lines = false;  // plain paper: thin lines show where to cut

  [[nodiscard]] int cells() const { return columns * rows; }
  bool operator==(const Stock&) const = default;
};

/// What a printer puts beside where it should, measured with the calibration page: positive is too
/// far to the left or too high, and moves everything right or down.
struct PrintOffset {
  double right = 0;  // millimetres
  double down = 0;
  bool operator==(const PrintOffset&) const = default;
};

/// Whether the grid can be used. Errors: BadInput with the measure that does not fit: a grid that
/// leaves its page, cells that overlap, sizes that are no sizes.
[[nodiscard]] Result<Stock> checked(Stock stock);

/// Cell `index` (from 0, row by row) of a checked stock.
[[nodiscard]] Box cell_box(const Stock& stock, int index);

struct CellPlace {
  int page = 0;  // from 0
  int cell = 0;  // from 0 on that page
  bool operator==(const CellPlace&) const = default;
};

/// Where each of `count` labels goes when the first one goes into cell `first` (from 0) of a sheet
/// that was used before. On a roll every label has a page of its own and `first` must be 0.
/// Errors: BadInput when there is no such cell.
[[nodiscard]] Result<std::vector<CellPlace>> places_for(const Stock& stock, int count, int first);

/// "14" or "3,4" (row, column), counted from 1, as the index of a cell. Errors: BadInput.
[[nodiscard]] Result<int> parse_cell(const Stock& stock, const std::string& text);

}  // namespace rackside
