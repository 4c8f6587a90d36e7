// rackside-log: everything about the log that needs no screen.

#include <fmt/format.h>

#include "core/clock/system_clock.hpp"
#include "core/clock/system_ids.hpp"
#include "core/program/command.hpp"
#include "core/store/default_path.hpp"

namespace rackside::program {
namespace {

// Where a device failed, what it said helps whoever looks into it.
int say(const Error& error) {
  const bool tell_where = error.kind == ErrorKind::Broken && !error.where.empty();
  fmt::print(stderr, "rackside-log: {}{}\n", error.sentence,
             tell_where ? fmt::format(" [{}]", error.where) : "");
  return failed;
}

int work(const Command& command, const std::string& log) try {
  const auto path = log.empty() ? default_log_path() : Result<std::filesystem::path>(log);
  if (!path) return say(path.error());
  SystemClock clock;
  SystemIds ids(clock);
  Desk desk{*path, clock, ids};
  const auto code = command.work(desk);
  return code ? *code : say(code.error());
} catch (const std::exception& unforeseen) {
  // Nothing is written outside a transaction, so nothing is half done.
  return say(
      {ErrorKind::Broken, "This could not be done. Nothing was changed.", unforeseen.what()});
}

int run(int count, char** words) {
  CommandLine parser{
      "The log of a Rackside collection: records in and out, merging, checking, copying.",
      "rackside-log"};
  std::string log;
  parser.option("--log", log, "the log file (default: rackside/log.db in the XDG data folder)")
      .value_name("PATH");
  parser.tells_all_help();
  parser.falls_through();  // --log is understood behind a subcommand, too
  parser.require_subcommand();
  const auto commands = add_commands(parser);
  if (const auto end = parser.read(count, words)) return *end;
  for (const Command& command : commands)
    if (command.words.was_chosen()) return work(command, log);
  return wrong_words;
}

}  // namespace
}  // namespace rackside::program

int main(int count, char** words) { return rackside::program::run(count, words); }
