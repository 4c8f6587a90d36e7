#pragma once
// What a sensor writes into a file: one line that it overwrites, or a CSV that it adds to. Pure
// over the text; reading the file is in core/sensor_file.

#include <chrono>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/climate/room_climate.hpp"
#include "core/values/result.hpp"

namespace rackside {

struct SensorReading {
  When when;
  std::string rack;  // empty is the room
  std::optional<Celsius> temperature;
  std::optional<Percent> humidity;

  bool operator==(const SensorReading&) const = default;
};

struct SensorText {
  std::vector<SensorReading> readings;   // in the order of the text
  std::vector<std::string> passed_over;  // lines that hold no reading, and why

  bool operator==(const SensorText&) const = default;
};

/// One line: "24.3 61", "24.3C 61%", "75.7 F, 61 %": the temperature, then the humidity where there
/// is one; `written` is when the file was written. CSV: a header line that names the column `when`
/// (ISO 8601 with an offset) and at least one of `temperature` and `humidity`; `rack` and `unit` (C
/// or F) may be there, other columns are passed over. Columns are parted by comma, semicolon or
/// tab. A line that is damaged or holds what no rack room can have (below -40 or above 60 C,
/// humidity outside 0 to 100 %) is passed over and named. Errors: BadInput when the text is
/// neither.
[[nodiscard]] Result<SensorText> read_sensor_text(std::string_view text, When written);

/// Those of `readings` that are later than what `known` has of their rack, at least `apart` from
/// each other, in order of time. Sensors write every few seconds; a log need not.
[[nodiscard]] std::vector<SensorReading> worth_keeping(std::vector<SensorReading> readings,
                                                       const RoomClimate& known,
                                                       std::chrono::minutes apart);

/// What is recorded of one reading: one event's details each for temperature and humidity.
[[nodiscard]] std::vector<Details> details_of(const SensorReading& reading);

}  // namespace rackside
