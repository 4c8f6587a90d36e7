#pragma once
// Lengths and temperatures in the units that a keeper reads.

#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "core/values/units.hpp"

namespace rackside {

enum class LengthUnit { Millimetre, Centimetre, Inch };
enum class TemperatureUnit { Celsius, Fahrenheit };

struct Units {
  LengthUnit length = LengthUnit::Millimetre;
  TemperatureUnit temperature = TemperatureUnit::Celsius;
  bool operator==(const Units&) const = default;
};

inline constexpr std::array all_length_units{LengthUnit::Millimetre, LengthUnit::Centimetre,
                                             LengthUnit::Inch};
inline constexpr std::array all_temperature_units{TemperatureUnit::Celsius,
                                                  TemperatureUnit::Fahrenheit};

/// "mm", "cm", "in".
[[nodiscard]] std::string_view unit_word(LengthUnit unit);
/// "°C", "°F".
[[nodiscard]] std::string_view unit_word(TemperatureUnit unit);
/// The inverse of unit_word, also without the degree sign.
[[nodiscard]] std::optional<LengthUnit> length_unit_of(std::string_view word);
[[nodiscard]] std::optional<TemperatureUnit> temperature_unit_of(std::string_view word);

/// A number that was typed in this unit.
[[nodiscard]] Millimetres in_millimetres(double value, LengthUnit unit);

/// "8 mm", "12.5 mm", "0.8 cm", "0.31 in": to the tenth of a millimetre or the hundredth of an inch
/// where it was measured so closely, and without zeros at the end.
[[nodiscard]] std::string length_words(Millimetres length, Units units);
/// As length_words, but as closely as prey is chosen: whole millimetres, tenths of an inch.
[[nodiscard]] std::string about_length_words(Millimetres length, Units units);
/// "24 °C", "75 °F": whole degrees, as one speaks of a room.
[[nodiscard]] std::string temperature_words(Celsius temperature, Units units);
/// "24.3 °C": to the tenth, as it was read.
[[nodiscard]] std::string exact_temperature_words(Celsius temperature, Units units);

}  // namespace rackside
