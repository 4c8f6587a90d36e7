#include "core/program/merge_command.hpp"

#include <fmt/format.h>

#include "core/program/wording.hpp"
#include "core/store/sqlite_log.hpp"

namespace rackside::program {
namespace {

// Enough to be quick, little enough to hold in memory and to keep a kiosk waiting only briefly.
constexpr std::size_t events_at_once = 5000;

Result<MergeOutcome> merge_all(LogStore& into, LogStore& from) {
  MergeOutcome all;
  for (std::int64_t position = 0;;) {
    const auto events = from.read_written_after(position, events_at_once);
    if (!events) return tl::unexpected(events.error());
    if (events->empty()) return all;
    const auto some = into.merge(*events);
    if (!some) return tl::unexpected(some.error());
    all.added += some->added;
    all.present += some->present;
  }
}

Result<int> merge_logs(const std::string& from, Desk& desk) {
  std::error_code ignored;
  if (std::filesystem::equivalent(from, desk.log, ignored))
    return failure(ErrorKind::NotNow, "Both names are the same log. There is nothing to merge.");
  auto other = SqliteLog::open(from, Access::Read);
  if (!other) return tl::unexpected(other.error());
  auto log = SqliteLog::open(desk.log, Access::Write);
  if (!log) return tl::unexpected(log.error());
  const auto outcome = merge_all(**log, **other);
  if (!outcome) return tl::unexpected(outcome.error());
  fmt::print("{} taken over from {}; {} here already.\n", counted(outcome->added, "event"), from,
             outcome->present);
  return done;
}

}  // namespace

Command add_merge_command(Vocabulary& parser) {
  const auto from = std::make_shared<std::string>();
  Vocabulary command = parser.subcommand(
      "merge",
      "Take over everything another kiosk's log holds and this one does not. The other log is only "
      "read. In whatever order logs are merged, and however often, the result is the same.");
  command.option("--from", *from, "the other log").value_name("PATH").required();
  return {command, [from](Desk& desk) { return merge_logs(*from, desk); }};
}

}  // namespace rackside::program
