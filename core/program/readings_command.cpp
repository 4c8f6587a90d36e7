#include "core/program/readings_command.hpp"

#include <fmt/format.h>

#include "core/program/wording.hpp"
#include "core/sensor_file/sensor_file.hpp"
#include "core/store/sqlite_log.hpp"

namespace rackside::program {
namespace {

struct Words {
  std::string file;
  std::string rack;
  int minutes_apart = 60;
};

Result<RoomClimate> known_climate(LogStore& log) {
  const auto read = log.read_kinds(
      {kind_name(TemperatureRead{}), kind_name(HumidityRead{}), kind_name(Retracted{})});
  if (!read) return tl::unexpected(read.error());
  return fold_climate(*read);
}

std::vector<Draft> drafts_of(const std::vector<SensorReading>& readings, Desk& desk) {
  std::vector<Draft> drafts;
  for (const SensorReading& reading : readings)
    for (Details& details : details_of(reading))
      drafts.push_back(Draft{.id = desk.ids.next_event(),
                             .by = "sensor",
                             .when = reading.when,
                             .animal = {},
                             .enclosure = {},
                             .details = std::move(details),
                             .note = {}});
  return drafts;
}

Result<int> take_over(const Words& words, Desk& desk) {
  const auto offset = desk.clock.now().offset;
  auto text = read_sensor_file(words.file, offset);
  if (!text) return tl::unexpected(text.error());
  for (SensorReading& reading : text->readings)
    if (reading.rack.empty()) reading.rack = words.rack;
  auto log = SqliteLog::open(desk.log, Access::Write);
  if (!log) return tl::unexpected(log.error());
  const auto known = known_climate(**log);
  if (!known) return tl::unexpected(known.error());
  const auto kept =
      worth_keeping(text->readings, *known, std::chrono::minutes{words.minutes_apart});
  const auto written = (*log)->append(drafts_of(kept, desk), desk.clock.now().utc);
  if (!written) return tl::unexpected(written.error());
  fmt::print("Taken over: {} of {}.\n", counted(static_cast<std::int64_t>(kept.size()), "reading"),
             text->readings.size());
  for (const std::string& line : text->passed_over) fmt::print("{}\n", line);
  return done;
}

}  // namespace

Command add_readings_command(Vocabulary& parser) {
  const auto words = std::make_shared<Words>();
  Vocabulary command = parser.subcommand(
      "readings",
      "Take over temperature and humidity from the file a sensor writes: one line such as "
      "\"24.3 61\", or a CSV with the columns when, temperature, humidity and rack. Readings that "
      "are in the log already are passed over.");
  command.option("file", words->file, "the sensor's file").required().value_name("FILE");
  command.option("--rack", words->rack, "the rack of readings that name none");
  command.option("--apart", words->minutes_apart, "minutes between two readings that are kept")
      .within(0, 24 * 60)
      .shows_default();
  return {command, [words](Desk& desk) { return take_over(*words, desk); }};
}

}  // namespace rackside::program
