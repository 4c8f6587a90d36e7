#include "core/program/backtest_command.hpp"

#include <fmt/format.h>

#include "core/backtest/backtest.hpp"
#include "core/chart/backtest_chart.hpp"
#include "core/forecast/collection_evidence.hpp"
#include "core/program/backtest_output.hpp"
#include "core/program/named_day.hpp"
#include "core/store/sqlite_log.hpp"

namespace rackside::program {
namespace {

struct Words {
  std::string from, to, picture;
};

Result<BacktestPlan> plan_from(const Words& words) {
  const auto from = parse_day(words.from);
  if (!from) return tl::unexpected(from.error());
  const auto to = parse_day(words.to);
  if (!to) return tl::unexpected(to.error());
  if (*to < *from)
    return failure(ErrorKind::BadInput, fmt::format("{} is before {}: --from is the earlier day.",
                                                    words.to, words.from));
  return plan_backtest(*from, *to);
}

Result<int> tell_backtest(const Words& words, Desk& desk) {
  const auto plan = plan_from(words);
  if (!plan) return tl::unexpected(plan.error());
  auto log = SqliteLog::open(desk.log, Access::Read);
  if (!log) return tl::unexpected(log.error());
  const auto known_now = gather_collection(**log, desk.clock.now().utc);
  if (!known_now) return tl::unexpected(known_now.error());
  const auto evidence_at = [&](Day day) {
    return gather_collection(**log, named_day(day, desk.clock).ends);
  };
  const auto report = backtest(*plan, evidence_at, *known_now);
  if (!report) return tl::unexpected(report.error());
  fmt::print("{}", backtest_text(*report));
  if (words.picture.empty()) return done;
  if (auto drawn = draw_backtest(*report, words.picture); !drawn)
    return tl::unexpected(drawn.error());
  fmt::print("\nDrawn to {}.\n", words.picture);
  return done;
}

}  // namespace

Command add_backtest_command(Vocabulary& parser) {
  const auto words = std::make_shared<Words>();
  Vocabulary command = parser.subcommand(
      "backtest",
      "Replay the log as it stood on past days and say how good the forecasts would have been, "
      "beside the rules of thumb. Changes nothing.");
  command.option("--from", words->from, "the first day to forecast from")
      .value_name("DATE")
      .required();
  command.option("--to", words->to, "the last one").value_name("DATE").required();
  command.option("--picture", words->picture, "also draw it: an .svg or a .png").value_name("FILE");
  return {command, [words](Desk& desk) { return tell_backtest(*words, desk); }};
}

}  // namespace rackside::program
