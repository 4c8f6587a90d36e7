#pragma once
// The pieces of a line that a sensor wrote.

#include <optional>
#include <string_view>
#include <vector>

#include "core/values/units.hpp"

namespace rackside::sensor {

/// Without blanks and quotes around it.
[[nodiscard]] std::string_view trimmed(std::string_view text);
/// The next line, taken off `text`.
[[nodiscard]] std::string_view next_line(std::string_view& text);
/// Trimmed fields; always at least one.
[[nodiscard]] std::vector<std::string_view> split(std::string_view line, char separator);
/// A number at the beginning of `text`, taken off it.
[[nodiscard]] std::optional<double> take_number(std::string_view& text);

/// None for a unit that is none and for values no rack room can have. No unit is Celsius.
[[nodiscard]] std::optional<Celsius> temperature_of(double value, std::string_view unit);
[[nodiscard]] std::optional<Percent> humidity_of(double value, std::string_view unit);

}  // namespace rackside::sensor
