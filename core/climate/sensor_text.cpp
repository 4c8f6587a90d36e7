#include "core/climate/sensor_text.hpp"

#include <algorithm>
#include <map>

#include "core/climate/sensor_csv.hpp"
#include "core/climate/sensor_fields.hpp"

namespace rackside {
namespace {

using namespace sensor;

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

}  // namespace

Result<SensorText> read_sensor_text(std::string_view text, When written) {
  if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
  if (auto table = read_csv(text)) return *std::move(table);
  std::string_view rest = text;
  const std::string_view first = next_line(rest);
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
