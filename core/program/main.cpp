// rackside-log: everything about the log that needs no screen.

#include <fmt/format.h>

#include <CLI/CLI.hpp>

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
  CLI::App parser{
      "The log of a Rackside collection: records in and out, merging, checking, copying.",
      "rackside-log"};
  std::string log;
  parser.add_option("--log", log, "the log file (default: rackside/log.db in the XDG data folder)")
      ->type_name("PATH");
  parser.set_help_all_flag("--help-all", "Print the help of every subcommand and exit");
  parser.fallthrough();  // --log is understood behind a subcommand, too
  parser.require_subcommand(1);
  const auto commands = add_commands(parser);
  try {
    parser.parse(count, words);
  } catch (const CLI::ParseError& problem) {
    return parser.exit(problem) == 0 ? done : wrong_words;
  }
  for (const Command& command : commands)
    if (command.words->parsed()) return work(command, log);
  return wrong_words;
}

}  // namespace
}  // namespace rackside::program

int main(int count, char** words) { return rackside::program::run(count, words); }
