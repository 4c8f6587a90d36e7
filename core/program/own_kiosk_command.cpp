#include "core/program/own_kiosk_command.hpp"

#include <fmt/format.h>

#include <CLI/CLI.hpp>

#include "core/store/kiosk_lock.hpp"
#include "core/store/sqlite_log.hpp"

namespace rackside::program {
namespace {

Result<int> make_own_kiosk(Desk& desk) {
  if (const auto there = SqliteLog::open(desk.log, Access::Read); !there)
    return tl::unexpected(there.error());
  // A kiosk that is running has its number in hand already.
  const auto lock = KioskLock::take(desk.log);
  if (!lock) return tl::unexpected(lock.error());
  auto log = SqliteLog::open(desk.log, Access::Write);
  if (!log) return tl::unexpected(log.error());
  if (auto became = (*log)->become(KioskId{desk.ids.next()}); !became)
    return tl::unexpected(became.error());
  fmt::print("This log is a kiosk of its own now. It can be merged with the one it came from.\n");
  return done;
}

}  // namespace

Command add_own_kiosk_command(CLI::App& parser) {
  CLI::App* command = parser.add_subcommand(
      "own-kiosk",
      "Make a log that was copied from another one a kiosk of its own. Do this to the copy, before "
      "anything is recorded in it: two kiosks that count as one cannot be merged any more.");
  return {command, [](Desk& desk) { return make_own_kiosk(desk); }};
}

}  // namespace rackside::program
