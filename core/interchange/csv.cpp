#include "core/interchange/csv.hpp"

#include <algorithm>

#include "core/interchange/utf8.hpp"

namespace rackside::interchange {
namespace {

int lines_in(std::string_view text) { return static_cast<int>(std::ranges::count(text, '\n')); }

}  // namespace

CsvReader::CsvReader(std::string file, std::string_view text)
    : file_(std::move(file)), rest_(text) {
  if (const auto bad = first_not_utf8(text))
    refuse({file_, 1 + lines_in(text.substr(0, *bad)), ""},
           "This line holds bytes that are not UTF-8. Save the file as UTF-8 and try again.");
  constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
  if (rest_.starts_with(byte_order_mark)) rest_.remove_prefix(byte_order_mark.size());
}

std::string CsvReader::quoted_cell(int row_line) {
  std::string cell;
  rest_.remove_prefix(1);
  for (;;) {
    const auto quote = rest_.find('"');
    if (quote == std::string_view::npos)
      refuse({file_, row_line, ""}, "A quotation mark is opened in this row and never closed.");
    cell += rest_.substr(0, quote);
    rest_.remove_prefix(quote + 1);
    if (!rest_.starts_with('"')) break;
    cell += '"';
    rest_.remove_prefix(1);
  }
  line_ += lines_in(cell);
  if (!rest_.empty() && rest_.find_first_of(",\r\n") != 0)
    refuse({file_, line_, ""}, "Something stands behind a closing quotation mark.");
  return cell;
}

std::string CsvReader::plain_cell() {
  const std::string_view cell = rest_.substr(0, rest_.find_first_of(",\r\n"));
  if (cell.find('"') != std::string_view::npos)
    refuse({file_, line_, ""},
           "A quotation mark stands inside a cell that does not begin with one.");
  rest_.remove_prefix(cell.size());
  return std::string(cell);
}

bool CsvReader::end_of_row() {
  if (rest_.starts_with(',')) {
    rest_.remove_prefix(1);
    return false;
  }
  if (rest_.starts_with('\r')) rest_.remove_prefix(1);
  if (rest_.starts_with('\n')) rest_.remove_prefix(1);
  ++line_;
  return true;
}

bool CsvReader::next(CsvRow& row) {
  while (!rest_.empty()) {
    row.line = line_;
    row.cells.clear();
    do row.cells.push_back(rest_.starts_with('"') ? quoted_cell(row.line) : plain_cell());
    while (!end_of_row());
    if (row.cells.size() > 1 || !row.cells[0].empty()) return true;
  }
  return false;
}

std::string csv_row(const std::vector<std::string>& cells) {
  std::string row;
  for (const std::string& cell : cells) {
    if (&cell != &cells.front()) row += ',';
    if (cell.find_first_of(",\"\r\n") == std::string::npos) {
      row += cell;
      continue;
    }
    row += '"';
    for (const char c : cell) row.append(c == '"' ? 2 : 1, c);
    row += '"';
  }
  return row += "\r\n";
}

}  // namespace rackside::interchange
