#include "core/climate/sensor_fields.hpp"

#include <algorithm>
#include <charconv>

namespace rackside::sensor {
namespace {

constexpr std::string_view blanks = " \t\r\"";

bool is_fahrenheit(std::string_view unit) { return unit == "F" || unit == "f" || unit == "°F"; }
bool is_celsius(std::string_view unit) {
  return unit.empty() || unit == "C" || unit == "c" || unit == "°C";
}

}  // namespace

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

std::optional<double> take_number(std::string_view& text) {
  double value = 0;
  const auto [end, code] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (code != std::errc{}) return std::nullopt;
  text.remove_prefix(static_cast<std::size_t>(end - text.data()));
  text = trimmed(text);
  return value;
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

}  // namespace rackside::sensor
