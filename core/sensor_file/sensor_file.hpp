#pragma once
// The file that a sensor writes.

#include <chrono>
#include <filesystem>

#include "core/climate/sensor_text.hpp"

namespace rackside {

/// Reads the file whole; `offset` is what the clock on the wall differs from UTC by, for a one-line
/// file, whose time is when it was last written.
/// Errors: NotFound, Broken (cannot be read), Full (larger than 16 MB: point the sensor at a new
/// file), BadInput as read_sensor_text. `where` is the path.
[[nodiscard]] Result<SensorText> read_sensor_file(const std::filesystem::path& path,
                                                  std::chrono::minutes offset);

}  // namespace rackside
