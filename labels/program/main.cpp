// rackside-labels: labels, cards and badges, printed and proven. Reads its options and runs the
// subcommand that was asked for.

#include <clocale>

#include "labels/program/commands.hpp"

namespace {

using namespace rackside;

void add_commands(Vocabulary& app, Session& session, Job& job) {
  for (const auto add :
       {add_sheet_command, add_batch_command, add_cards_command, add_shelves_command,
        add_badges_command, add_handover_command, add_returned_command, add_proof_command,
        add_read_command, add_calibrate_command, add_sheets_command, add_printers_command})
    add(app, session, job);
}

std::string problem_sentence(const std::string& problem) {
  return "rackside-labels: " + problem + ". `rackside-labels --help` tells the options.\n";
}

}  // namespace

int main(int argument_count, char** arguments) {
  std::setlocale(LC_CTYPE, "");
  CommandLine app("Labels for tubs, cards for the wall, badges for people, and reading them back.",
                  "rackside-labels");
  Session session;
  Job job;
  app.option("--log", session.log_option,
             "the log to work on (default: rackside/log.db in the XDG data folder)")
      .value_name("PATH");
  app.require_subcommand();
  app.falls_through();
  app.footer(
      "Exit codes: 0 all went well, 1 something was refused or failed, 2 wrong options.\n"
      "`rackside-labels SUBCOMMAND --help` tells the options of each.");
  add_commands(app, session, job);
  app.tells_problems_as(problem_sentence);
  if (const auto end = app.read(argument_count, arguments)) return *end;
  try {
    return job();
  } catch (const std::exception& unforeseen) {
    // The log is written in whole transactions, so nothing in it is half done.
    return say({ErrorKind::Broken, "This could not be done. The log is whole.", unforeseen.what()});
  }
}
