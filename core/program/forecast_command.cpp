#include "core/program/forecast_command.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "core/collection/place.hpp"
#include "core/forecast/collection_evidence.hpp"
#include "core/forecast/collection_model.hpp"
#include "core/program/forecast_output.hpp"
#include "core/program/named_day.hpp"
#include "core/store/sqlite_log.hpp"

namespace rackside::program {
namespace {

struct Words {
  std::string as_of;
  bool json = false;
};

Result<int> tell_forecasts(const Words& words, Desk& desk) {
  const auto day = words.as_of.empty() ? named_day(desk.clock.now().day(), desk.clock)
                                       : named_day(words.as_of, desk.clock);
  if (!day) return tl::unexpected(day.error());
  auto log = SqliteLog::open(desk.log, Access::Read);
  if (!log) return tl::unexpected(log.error());
  auto animals = gather_collection(**log, day->ends);
  if (!animals) return tl::unexpected(animals.error());
  const CollectionModel model = learn(*animals, wall_day(day->noon));
  std::ranges::stable_sort(*animals, natural_before, &Evidence::key);
  if (!words.json) fmt::print("{}", forecast_table_head());
  for (const Evidence& animal : *animals) {
    if (animal.ended) continue;
    const Forecast told = forecast(model, animal, day->noon);
    if (words.json)
      fmt::print("{}\n", forecast_json(told, animal.key, day->day));
    else
      fmt::print("{}", forecast_table_row(told, animal, day->day));
  }
  return done;
}

}  // namespace

Command add_forecast_command(Vocabulary& parser) {
  const auto words = std::make_shared<Words>();
  Vocabulary command = parser.subcommand(
      "forecast",
      "Tell for each living animal whether it is in premoult, whether it has moulted unseen, when "
      "the next moult is likely, and why. Uses nothing that happened after the day.");
  command.option("--as-of", words->as_of, "the day (default: today)").value_name("DATE");
  command.flag("--json", words->json, "one JSON object a line instead of a table");
  return {command, [words](Desk& desk) { return tell_forecasts(*words, desk); }};
}

}  // namespace rackside::program
