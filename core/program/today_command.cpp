#include "core/program/today_command.hpp"

#include <fmt/format.h>

#include "core/overview/overview.hpp"
#include "core/program/named_day.hpp"
#include "core/round/plan_text.hpp"
#include "core/store/sqlite_log.hpp"

namespace rackside::program {
namespace {

struct Words {
  std::string as_of;
  bool json = false;
};

// Now, or the end of a named day, so that everything that was recorded on it counts.
Result<Moment> moment_of(const Words& words, Clock& clock) {
  if (words.as_of.empty()) return clock.now();
  return named_day(words.as_of, clock).map([&](const NamedDay& day) {
    return Moment{day.ends, clock.offset_at(day.ends)};
  });
}

Result<int> today(const Words& words, Desk& desk) {
  const auto moment = moment_of(words, desk.clock);
  if (!moment) return tl::unexpected(moment.error());
  auto log = SqliteLog::open(desk.log, Access::Read);
  if (!log) return tl::unexpected(log.error());
  Forecaster forecaster;
  const auto whole = read_overview(**log, forecaster, *moment, Until::AsOf);
  if (!whole) return tl::unexpected(whole.error());
  const DayPlan plan =
      plan_day(whole->collection, whole->forecasts, whole->rules, whole->climate, *moment);
  const Preparation ready = prepare(plan, whole->collection, whole->rules.collection.margin);
  auto* const write = words.json ? plan_as_json : plan_as_text;
  fmt::print("{}{}", write(plan, ready, whole->collection), words.json ? "\n" : "");
  return done;
}

}  // namespace

Command add_today_command(Vocabulary& parser) {
  const auto words = std::make_shared<Words>();
  Vocabulary command = parser.subcommand(
      "today",
      "Print what to carry and what to do at each tub, in walking order, with the reasons.");
  command
      .option("--as-of", words->as_of, "the plan as it stood at the end of that day (default: now)")
      .value_name("DATE");
  command.flag("--json", words->json, "one JSON object instead of text");
  return {command, [words](Desk& desk) { return today(*words, desk); }};
}

}  // namespace rackside::program
