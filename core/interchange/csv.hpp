#pragma once
// Comma-separated values as RFC 4180 describes them: quotes around what holds commas, quotes or
// line breaks; a quote inside is doubled. Also read: bare line feeds, a byte order mark at the
// beginning, no line break at the end.

#include <string>
#include <string_view>
#include <vector>

#include "core/interchange/refusal.hpp"

namespace rackside::interchange {

struct CsvRow {
  int line = 0;  // where it begins
  std::vector<std::string> cells;
};

class CsvReader {
 public:
  /// `text` must outlive the reader; `file` names it in refusals. Throws Refusal when `text` is not
  /// UTF-8 as a whole.
  CsvReader(std::string file, std::string_view text);

  /// The next row that is not an empty line; false at the end. Throws Refusal at a quote that
  /// stands inside a cell or is never closed.
  [[nodiscard]] bool next(CsvRow& row);

  [[nodiscard]] const std::string& file() const { return file_; }

 private:
  [[nodiscard]] std::string quoted_cell(int row_line);
  [[nodiscard]] std::string plain_cell();
  bool end_of_row();

  std::string file_;
  std::string_view rest_;
  int line_ = 1;
};

/// One row with CRLF at its end, quoted where it must be.
[[nodiscard]] std::string csv_row(const std::vector<std::string>& cells);

}  // namespace rackside::interchange
