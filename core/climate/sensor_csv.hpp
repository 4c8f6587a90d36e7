#pragma once
// The CSV that a sensor adds to; see sensor_text.hpp for its shape.

#include <optional>
#include <string_view>

#include "core/climate/sensor_text.hpp"

namespace rackside::sensor {

/// None when the first line is no header of ours.
[[nodiscard]] std::optional<SensorText> read_csv(std::string_view text);

}  // namespace rackside::sensor
