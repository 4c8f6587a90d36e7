#include "core/climate/sensor_csv.hpp"

#include <fmt/format.h>

#include <map>

#include "core/climate/sensor_fields.hpp"

namespace rackside::sensor {
namespace {

struct Columns {
  char separator = ',';
  std::map<std::string_view, std::size_t> at;
};

std::optional<Columns> read_header(std::string_view line) {
  for (const char separator : {',', ';', '\t'}) {
    Columns columns{separator, {}};
    const auto names = split(line, separator);
    for (std::size_t i = 0; i < names.size(); ++i) columns.at.emplace(names[i], i);
    if (columns.at.contains("when") &&
        (columns.at.contains("temperature") || columns.at.contains("humidity")))
      return columns;
  }
  return std::nullopt;
}

class Row {
 public:
  Row(const Columns& columns, std::string_view line)
      : columns_(columns), fields_(split(line, columns.separator)) {}

  [[nodiscard]] std::string_view at(std::string_view name) const {
    const auto column = columns_.at.find(name);
    if (column == columns_.at.end() || column->second >= fields_.size()) return {};
    return fields_[column->second];
  }

 private:
  const Columns& columns_;
  std::vector<std::string_view> fields_;
};

// Errors are the words in which the line is named as passed over.
Result<SensorReading> read_row(const Row& row) {
  const auto when = parse_when(row.at("when"), std::chrono::minutes{0});
  if (!when || when->precision == Precision::DayOnly)
    return failure(ErrorKind::BadInput, "its time cannot be read");
  SensorReading reading{.when = *when, .rack = std::string(row.at("rack"))};
  if (std::string_view text = row.at("temperature"); !text.empty()) {
    const auto value = take_number(text);
    const std::string_view unit = text.empty() ? row.at("unit") : text;
    if (value) reading.temperature = temperature_of(*value, unit);
    if (!reading.temperature) return failure(ErrorKind::BadInput, "its temperature cannot be");
  }
  if (std::string_view text = row.at("humidity"); !text.empty()) {
    const auto value = take_number(text);
    if (value) reading.humidity = humidity_of(*value, text);
    if (!reading.humidity) return failure(ErrorKind::BadInput, "its humidity cannot be");
  }
  if (!reading.temperature && !reading.humidity)
    return failure(ErrorKind::BadInput, "it holds no reading");
  return reading;
}

SensorText read_rows(const Columns& columns, std::string_view text) {
  SensorText result;
  for (int number = 2; !text.empty(); ++number) {
    const std::string_view line = next_line(text);
    if (trimmed(line).empty()) continue;
    auto reading = read_row(Row(columns, line));
    if (reading)
      result.readings.push_back(*std::move(reading));
    else
      result.passed_over.push_back(
          fmt::format("Line {} was passed over: {}.", number, reading.error().sentence));
  }
  return result;
}

}  // namespace

std::optional<SensorText> read_csv(std::string_view text) {
  const auto columns = read_header(next_line(text));
  if (!columns) return std::nullopt;
  return read_rows(*columns, text);
}

}  // namespace rackside::sensor
