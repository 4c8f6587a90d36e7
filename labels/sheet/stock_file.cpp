#include "labels/sheet/stock_file.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <toml++/toml.h>
#include <algorithm>
#include <array>
#include <cassert>
#include <sstream>

namespace rackside {

extern const std::string_view built_in_stock_text;  // stock.toml

namespace {

// Thrown inside this file only, where a sheet says something it cannot.
struct Refused {
  std::string sentence;
};

constexpr std::array members{"name",   "about", "page",      "grid", "cell",
                             "margin", "pitch", "cut_lines", "roll", "length"};

void refuse_unknown_members(const toml::table& sheet) {
  for (const auto& [key, value] : sheet)
    if (std::ranges::find(members, key.str()) == members.end())
      throw Refused{fmt::format("there is nothing called \"{}\"; a sheet has: {}", key.str(),
                                fmt::join(members, ", "))};
}

double number_at(const toml::table& sheet, const char* name) {
  const auto value = sheet[name].value<double>();
  if (!value) throw Refused{fmt::format("{} must be a number of millimetres", name)};
  return *value;
}

std::pair<double, double> pair_at(const toml::table& sheet, const char* name) {
  const auto* array = sheet[name].as_array();
  const auto first =
      array != nullptr && array->size() == 2 ? (*array)[0].value<double>() : std::nullopt;
  const auto second = first ? (*array)[1].value<double>() : std::nullopt;
  if (!second) throw Refused{fmt::format("{} must be two numbers: [across, down]", name)};
  return {*first, *second};
}

void read_roll(const toml::table& sheet, Stock& stock) {
  stock.shape = StockShape::Roll;
  stock.page_height = stock.cell_height = number_at(sheet, "roll");
  stock.page_width = stock.cell_width = number_at(sheet, "length");
  // Text runs along the longer side, so that it is the page of a printer turned as people read it.
  if (stock.page_width < stock.page_height) {
    std::swap(stock.page_width, stock.page_height);
    std::swap(stock.cell_width, stock.cell_height);
  }
}

void read_grid(const toml::table& sheet, Stock& stock) {
  std::tie(stock.page_width, stock.page_height) = pair_at(sheet, "page");
  const auto [columns, rows] = pair_at(sheet, "grid");
  stock.columns = static_cast<int>(std::clamp(columns, -1.0, 10000.0));
  stock.rows = static_cast<int>(std::clamp(rows, -1.0, 10000.0));
  std::tie(stock.cell_width, stock.cell_height) = pair_at(sheet, "cell");
  std::tie(stock.margin_left, stock.margin_top) = pair_at(sheet, "margin");
  std::tie(stock.pitch_x, stock.pitch_y) = sheet.contains("pitch")
                                               ? pair_at(sheet, "pitch")
                                               : std::pair{stock.cell_width, stock.cell_height};
}

Stock read_sheet(const toml::table& sheet) {
  refuse_unknown_members(sheet);
  Stock stock;
  stock.name = sheet["name"].value_or(std::string{});
  if (stock.name.empty()) throw Refused{"a sheet needs a name"};
  stock.about = sheet["about"].value_or(std::string{});
  stock.cut_lines = sheet["cut_lines"].value_or(false);
  if (sheet.contains("roll"))
    read_roll(sheet, stock);
  else
    read_grid(sheet, stock);
  return stock;
}

std::string place_of(const std::string& file_name, const toml::source_region& region) {
  return fmt::format("{}, line {}", file_name, region.begin.line);
}

}  // namespace

Result<std::vector<Stock>> parse_stock(std::string_view toml, const std::string& file_name) {
  std::vector<Stock> list;
  try {
    const toml::table file = toml::parse(toml, file_name);
    const auto* sheets = file["sheet"].as_array();
    if (sheets == nullptr)
      return failure(ErrorKind::BadInput, "There is no [[sheet]] in this file.", file_name);
    for (const auto& node : *sheets) {
      const auto* sheet = node.as_table();
      const std::string where = place_of(file_name, node.source());
      if (sheet == nullptr) return failure(ErrorKind::BadInput, "A sheet must be a table.", where);
      try {
        auto stock = checked(read_sheet(*sheet));
        if (!stock) return failure(ErrorKind::BadInput, stock.error().sentence, where);
        list.push_back(*std::move(stock));
      } catch (const Refused& refused) {
        return failure(ErrorKind::BadInput,
                       fmt::format("A label sheet cannot be read: {}.", refused.sentence), where);
      }
    }
  } catch (const toml::parse_error& problem) {
    return failure(
        ErrorKind::BadInput,
        fmt::format("The file of label sheets cannot be read: {}.", problem.description()),
        place_of(file_name, problem.source()));
  }
  return list;
}

const std::vector<Stock>& built_in_stock() {
  static const std::vector<Stock> stock = parse_stock(built_in_stock_text, "stock.toml").value();
  return stock;
}

std::vector<Stock> with_own(std::vector<Stock> stock, const std::vector<Stock>& own) {
  for (const Stock& one : own) {
    const auto same = std::ranges::find(stock, one.name, &Stock::name);
    if (same == stock.end())
      stock.push_back(one);
    else
      *same = one;
  }
  return stock;
}

Result<Stock> stock_named(const std::vector<Stock>& stock, const std::string& name) {
  const auto found = std::ranges::find(stock, name, &Stock::name);
  if (found != stock.end()) return *found;
  std::vector<std::string_view> names;
  for (const Stock& one : stock) names.push_back(one.name);
  return failure(ErrorKind::NotFound, fmt::format("There is no label sheet \"{}\". There are: {}.",
                                                  name, fmt::join(names, ", ")));
}

}  // namespace rackside
