#include "core/climate/sensor_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <map>

namespace rackside {
namespace {

constexpr std::string_view blanks = " \t\r\"";

std::string_view trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(blanks);
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

std::string_view next_line(std::string_view& text) {
  const auto end = std::min(text.find('\n'), text.size());
  const std::string_view line = text.substr(0, end);
  text.remove_prefix(std::min(end + 1, text.size()));
  return line;
}

std::vector<std::string_view> split(std::string_view line, char separator) {
  std::vector<std::string_view> fields;
  while (true) {
    const auto end = std::min(line.find(separator), line.size());
    fields.push_back(trimmed(line.substr(0, end)));
    if (end == line.size()) return fields;
    line.remove_prefix(end + 1);
  }
}

// A number at the beginning of `text`, taken off it.
std::optional<double> take_number(std::string_view& text) {
  double value = 0;
  const auto [end, code] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (code != std::errc{}) return std::nullopt;
  text.remove_prefix(static_cast<std::size_t>(end - text.data()));
  text = trimmed(text);
  return value;
}

bool is_fahrenheit(std::string_view unit) { return unit == "F" || unit == "f" || unit == "°F"; }
bool is_celsius(std::string_view unit) {
  return unit.empty() || unit == "C" || unit == "c" || unit == "°C";
}

std::optional<Celsius> temperature_of(double value, std::string_view unit) {
  if (!is_celsius(unit) && !is_fahrenheit(unit)) return std::nullopt;
  const Celsius celsius = is_fahrenheit(unit) ? from_fahrenheit(value) : Celsius{value};
  if (!(celsius.value >= -40 && celsius.value <= 60)) return std::nullopt;
  return celsius;
}

std::optional<Percent> humidity_of(double value, std::string_view unit) {
  if (!unit.empty() && unit != "%") return std::nullopt;
  if (!(value >= 0 && value <= 100)) return std::nullopt;
  return Percent{value};
}

// One line ---------------------------------------------------------------------------------------

std::string_view take_unit(std::string_view& text) {
  const auto end = std::min(text.find_first_of("0123456789+-.,; \t"), text.size());
  const std::string_view unit = text.substr(0, end);
  const auto next = std::min(text.find_first_not_of(",; \t", end), text.size());
  text.remove_prefix(next);
  return unit;
}

std::optional<SensorReading> read_one_line(std::string_view line, When written) {
  line = trimmed(line);
  SensorReading reading{.when = written};
  const auto celsius = take_number(line);
  if (!celsius) return std::nullopt;
  reading.temperature = temperature_of(*celsius, take_unit(line));
  if (!reading.temperature) return std::nullopt;
  if (line.empty()) return reading;
  const auto percent = take_number(line);
  if (!percent) return std::nullopt;
  reading.humidity = humidity_of(*percent, take_unit(line));
  if (!reading.humidity || !line.empty()) return std::nullopt;
  return reading;
}

// CSV --------------------------------------------------------------------------------------------

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

Result<SensorText> read_sensor_text(std::string_view text, When written) {
  if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
  std::string_view rest = text;
  const std::string_view first = next_line(rest);
  if (const auto columns = read_header(first)) return read_rows(*columns, rest);
  if (auto reading = read_one_line(first, written); reading && trimmed(rest).empty())
    return SensorText{.readings = {*std::move(reading)}, .passed_over = {}};
  return failure(ErrorKind::BadInput,
                 "This is no sensor's file. It needs one line such as \"24.3 61\", or a first line "
                 "that names the columns when, temperature and humidity.");
}

std::vector<SensorReading> worth_keeping(std::vector<SensorReading> readings,
                                         const RoomClimate& known, std::chrono::minutes apart) {
  std::ranges::stable_sort(readings, {},
                           [](const auto& reading) { return reading.when.moment.utc; });
  std::map<std::string, Instant> last;
  for (const auto& [rack, climate] : known.racks) {
    if (climate.temperature) last[rack] = climate.temperature->when.moment.utc;
    if (climate.humidity) last[rack] = std::max(last[rack], climate.humidity->when.moment.utc);
  }
  std::vector<SensorReading> kept;
  for (SensorReading& reading : readings) {
    const auto before = last.find(reading.rack);
    if (before != last.end() && reading.when.moment.utc < before->second + apart) continue;
    last[reading.rack] = reading.when.moment.utc;
    kept.push_back(std::move(reading));
  }
  return kept;
}

std::vector<Details> details_of(const SensorReading& reading) {
  std::vector<Details> details;
  if (reading.temperature) details.push_back(TemperatureRead{*reading.temperature, reading.rack});
  if (reading.humidity) details.push_back(HumidityRead{*reading.humidity, reading.rack});
  return details;
}

}  // namespace rackside
