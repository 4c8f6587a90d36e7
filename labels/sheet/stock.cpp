#include "labels/sheet/stock.hpp"

#include <fmt/format.h>

#include <charconv>
#include <cmath>
#include <optional>
#include <string_view>

namespace rackside {
namespace {

// Sizes in stock files are rounded to a hundredth; a grid may stick out by as much.
constexpr double tolerance = 0.011;
constexpr double largest_page = 2000;
constexpr int most_cells_a_side = 200;

tl::unexpected<Error> refused(const Stock& stock, std::string sentence) {
  return failure(ErrorKind::BadInput,
                 fmt::format("The label sheet \"{}\" cannot be used: {}", stock.name, sentence),
                 stock.name);
}

bool is_size(double millimetres) {
  return std::isfinite(millimetres) && millimetres > 0 && millimetres <= largest_page;
}

bool is_margin(double millimetres) {
  return std::isfinite(millimetres) && millimetres >= 0 && millimetres <= largest_page;
}

double right_end(const Stock& s) {
  return s.margin_left + (s.columns - 1) * s.pitch_x + s.cell_width;
}
double lower_end(const Stock& s) { return s.margin_top + (s.rows - 1) * s.pitch_y + s.cell_height; }

std::optional<int> number(std::string_view text) {
  int value = 0;
  const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (problem != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  return value;
}

}  // namespace

Result<Stock> checked(Stock stock) {
  if (!is_size(stock.page_width) || !is_size(stock.page_height) || !is_size(stock.cell_width) ||
      !is_size(stock.cell_height))
    return refused(stock, "page and cell need a width and a height in millimetres.");
  if (stock.columns < 1 || stock.rows < 1 || stock.columns > most_cells_a_side ||
      stock.rows > most_cells_a_side)
    return refused(stock, fmt::format("it needs 1 to {} columns and rows.", most_cells_a_side));
  if (!is_margin(stock.margin_left) || !is_margin(stock.margin_top) || !is_margin(stock.pitch_x) ||
      !is_margin(stock.pitch_y))
    return refused(stock, "margins and pitch cannot be below 0 mm.");
  if (stock.columns > 1 && stock.pitch_x < stock.cell_width - tolerance)
    return refused(stock, fmt::format("cells {:g} mm wide overlap at a pitch of {:g} mm.",
                                      stock.cell_width, stock.pitch_x));
  if (stock.rows > 1 && stock.pitch_y < stock.cell_height - tolerance)
    return refused(stock, fmt::format("cells {:g} mm high overlap at a pitch of {:g} mm.",
                                      stock.cell_height, stock.pitch_y));
  if (right_end(stock) > stock.page_width + tolerance)
    return refused(stock, fmt::format("its grid ends {:.2f} mm beyond the right edge of the page.",
                                      right_end(stock) - stock.page_width));
  if (lower_end(stock) > stock.page_height + tolerance)
    return refused(stock, fmt::format("its grid ends {:.2f} mm below the page.",
                                      lower_end(stock) - stock.page_height));
  return stock;
}

Box cell_box(const Stock& stock, int index) {
  return {stock.margin_left + index % stock.columns * stock.pitch_x,
          stock.margin_top + index / stock.columns * stock.pitch_y, stock.cell_width,
          stock.cell_height};
}

Result<std::vector<CellPlace>> places_for(const Stock& stock, int count, int first) {
  if (first < 0 || first >= stock.cells())
    return failure(ErrorKind::BadInput,
                   fmt::format("\"{}\" has cells 1 to {}; there is no cell {}.", stock.name,
                               stock.cells(), first + 1));
  std::vector<CellPlace> places;
  places.reserve(static_cast<std::size_t>(std::max(count, 0)));
  for (int i = first; i < first + count; ++i)
    places.push_back({i / stock.cells(), i % stock.cells()});
  return places;
}

Result<int> parse_cell(const Stock& stock, const std::string& text) {
  const auto comma = text.find(',');
  if (comma == std::string::npos) {
    const auto cell = number(text);
    if (cell && *cell >= 1 && *cell <= stock.cells()) return *cell - 1;
  } else {
    const auto row = number(std::string_view(text).substr(0, comma));
    const auto column = number(std::string_view(text).substr(comma + 1));
    if (row && column && *row >= 1 && *row <= stock.rows && *column >= 1 &&
        *column <= stock.columns)
      return (*row - 1) * stock.columns + *column - 1;
  }
  return failure(
      ErrorKind::BadInput,
      fmt::format("\"{}\" is no cell of \"{}\", which has {} rows of {}: say a number from "
                  "1 to {}, or row,column.",
                  text, stock.name, stock.rows, stock.columns, stock.cells()));
}

}  // namespace rackside
