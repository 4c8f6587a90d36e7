#pragma once
// A file with named columns, in any order, of which some may be missing.

#include <optional>
#include <span>

#include "core/interchange/csv.hpp"

namespace rackside::interchange {

struct Column {
  std::string_view name;
  bool required = false;  // the column, not every cell of it
};

/// A row whose cells are asked for by the number of their column in the list of known columns.
class Row {
 public:
  Row(std::string file, int line, std::span<const Column> columns, std::vector<std::string> cells)
      : file_(std::move(file)), line_(line), columns_(columns), cells_(std::move(cells)) {}

  /// The cell as it stands; empty where the file has no such column.
  [[nodiscard]] const std::string& text(std::size_t column) const { return cells_[column]; }
  /// The cell without blanks around it, in lower case: for words out of a list.
  [[nodiscard]] std::string word(std::size_t column) const;
  [[nodiscard]] bool empty(std::size_t column) const { return cells_[column].empty(); }
  [[noreturn]] void refuse(std::size_t column, const std::string& reason) const;
  [[nodiscard]] std::string_view name(std::size_t column) const { return columns_[column].name; }
  [[nodiscard]] std::size_t column_count() const { return cells_.size(); }

  // The same, read as something. None where the cell is empty; throw Refusal.
  [[nodiscard]] std::optional<int> whole_number(std::size_t column, int least, int most) const;
  [[nodiscard]] std::optional<double> decimal(std::size_t column) const;

 private:
  std::string file_;
  int line_;
  std::span<const Column> columns_;
  std::vector<std::string> cells_;
};

class Table {
 public:
  /// Reads the header line. Throws Refusal: a column that is none of `columns`, one that comes
  /// twice, a required one that is missing, no header at all. `columns` and `text` must outlive
  /// the table.
  Table(std::string file, std::string_view text, std::span<const Column> columns);

  /// None at the end. Throws Refusal, also when a row has not as many cells as the header.
  [[nodiscard]] std::optional<Row> next();

 private:
  void place(const CsvRow& header, std::size_t cell);

  CsvReader reader_;
  std::span<const Column> columns_;
  std::vector<std::size_t> column_of_cell_;
};

[[nodiscard]] std::string trimmed(std::string_view text);

}  // namespace rackside::interchange
