#include "core/interchange/table.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>

namespace rackside::interchange {
namespace {

constexpr std::string_view blanks = " \t";

std::string names_of(std::span<const Column> columns) {
  std::string list;
  for (const Column& column : columns) {
    if (!list.empty()) list += ", ";
    list += column.name;
  }
  return list;
}

template <class Number>
std::optional<Number> parse_number(const std::string& text) {
  Number number{};
  const auto [stop, problem] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (problem != std::errc{} || stop != text.data() + text.size()) return std::nullopt;
  return number;
}

}  // namespace

std::string trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(blanks);
  if (first == std::string_view::npos) return {};
  return std::string(text.substr(first, text.find_last_not_of(blanks) - first + 1));
}

std::string Row::word(std::size_t column) const {
  std::string word = trimmed(cells_[column]);
  for (char& c : word)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return word;
}

void Row::refuse(std::size_t column, const std::string& reason) const {
  interchange::refuse({file_, line_, std::string(name(column))}, reason);
}

std::optional<int> Row::whole_number(std::size_t column, int least, int most) const {
  const std::string text = trimmed(this->text(column));
  if (text.empty()) return std::nullopt;
  const auto number = parse_number<int>(text);
  if (!number || *number < least || *number > most)
    refuse(column, fmt::format("\"{}\" is not a whole number from {} to {}.", text, least, most));
  return number;
}

std::optional<double> Row::decimal(std::size_t column) const {
  const std::string text = trimmed(this->text(column));
  if (text.empty()) return std::nullopt;
  const auto number = parse_number<double>(text);
  if (!number || !std::isfinite(*number))
    refuse(column, fmt::format("\"{}\" is not a number like 12.5.", text));
  return number;
}

Table::Table(std::string file, std::string_view text, std::span<const Column> columns)
    : reader_(std::move(file), text), columns_(columns) {
  CsvRow header;
  if (!reader_.next(header))
    interchange::refuse({reader_.file(), 1, ""},
                        fmt::format("The file is empty. Its first line must name the columns: {}.",
                                    names_of(columns)));
  if (header.cells.size() == 1 && header.cells[0].find(';') != std::string::npos)
    interchange::refuse({reader_.file(), header.line, ""},
                        "The columns are separated by semicolons. Save the file with commas.");
  for (std::size_t cell = 0; cell < header.cells.size(); ++cell) place(header, cell);
  for (std::size_t i = 0; i < columns_.size(); ++i)
    if (columns_[i].required && std::ranges::find(column_of_cell_, i) == column_of_cell_.end())
      interchange::refuse({reader_.file(), header.line, ""},
                          fmt::format("The column \"{}\" is missing.", columns_[i].name));
}

void Table::place(const CsvRow& header, std::size_t cell) {
  const std::string name = trimmed(header.cells[cell]);
  const At at{reader_.file(), header.line, name};
  const auto found = std::ranges::find(columns_, name, &Column::name);
  if (found == columns_.end())
    interchange::refuse(at, fmt::format("\"{}\" is not a column of this file. The columns are: {}.",
                                        name, names_of(columns_)));
  const auto column = static_cast<std::size_t>(found - columns_.begin());
  if (std::ranges::find(column_of_cell_, column) != column_of_cell_.end())
    interchange::refuse(at, fmt::format("The column \"{}\" stands there twice.", name));
  column_of_cell_.push_back(column);
}

std::optional<Row> Table::next() {
  CsvRow row;
  if (!reader_.next(row)) return std::nullopt;
  if (row.cells.size() != column_of_cell_.size())
    interchange::refuse({reader_.file(), row.line, ""},
                        fmt::format("This row has {} cells and the header has {}.",
                                    row.cells.size(), column_of_cell_.size()));
  std::vector<std::string> cells(columns_.size());
  for (std::size_t i = 0; i < row.cells.size(); ++i)
    cells[column_of_cell_[i]] = std::move(row.cells[i]);
  return Row(reader_.file(), row.line, columns_, std::move(cells));
}

}  // namespace rackside::interchange
