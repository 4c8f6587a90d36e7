#include "core/words/measures.hpp"

#include <fmt/format.h>

#include <cmath>

namespace rackside {
namespace {

double in_unit(Millimetres length, LengthUnit unit) {
  switch (unit) {
    case LengthUnit::Millimetre: return length.value;
    case LengthUnit::Centimetre: return length.value / 10.0;
    case LengthUnit::Inch: return to_inches(length);
  }
  return length.value;
}

double in_unit(Celsius temperature, TemperatureUnit unit) {
  return unit == TemperatureUnit::Celsius ? temperature.value : to_fahrenheit(temperature);
}

/// "12.5" and "12", never "12.0" and never "-0".
std::string rounded(double value, int decimals) {
  const double scale = std::pow(10.0, decimals);
  return fmt::format("{:.12g}", std::round(value * scale) / scale + 0.0);
}

std::string in_words(Millimetres length, LengthUnit unit, int decimals) {
  return fmt::format("{} {}", rounded(in_unit(length, unit), decimals), unit_word(unit));
}

}  // namespace

std::string_view unit_word(LengthUnit unit) {
  switch (unit) {
    case LengthUnit::Millimetre: return "mm";
    case LengthUnit::Centimetre: return "cm";
    case LengthUnit::Inch: return "in";
  }
  return {};
}

std::string_view unit_word(TemperatureUnit unit) {
  return unit == TemperatureUnit::Celsius ? "°C" : "°F";
}

std::optional<LengthUnit> length_unit_of(std::string_view word) {
  for (const LengthUnit unit : all_length_units)
    if (unit_word(unit) == word) return unit;
  return std::nullopt;
}

std::optional<TemperatureUnit> temperature_unit_of(std::string_view word) {
  if (word == "C" || word == "°C") return TemperatureUnit::Celsius;
  if (word == "F" || word == "°F") return TemperatureUnit::Fahrenheit;
  return std::nullopt;
}

Millimetres in_millimetres(double value, LengthUnit unit) {
  switch (unit) {
    case LengthUnit::Millimetre: return {value};
    case LengthUnit::Centimetre: return {value * 10};
    case LengthUnit::Inch: return from_inches(value);
  }
  return {value};
}

std::string length_words(Millimetres length, Units units) {
  return in_words(length, units.length, units.length == LengthUnit::Millimetre ? 1 : 2);
}

std::string about_length_words(Millimetres length, Units units) {
  return in_words(length, units.length, units.length == LengthUnit::Millimetre ? 0 : 1);
}

std::string temperature_words(Celsius temperature, Units units) {
  return fmt::format("{} {}", rounded(in_unit(temperature, units.temperature), 0),
                     unit_word(units.temperature));
}

std::string exact_temperature_words(Celsius temperature, Units units) {
  return fmt::format("{:.1f} {}", in_unit(temperature, units.temperature),
                     unit_word(units.temperature));
}

}  // namespace rackside
