// rackside-labels sheet: labels for tubs that are in the log.

#include <memory>

#include "labels/program/commands.hpp"
#include "labels/program/print_run.hpp"
#include "labels/program/tub_options.hpp"

namespace rackside {
namespace {

struct SheetOptions {
  TubOptions tubs;
  std::string by;
  PrintOptions print;
};

int run(Session& session, const SheetOptions& options) {
  if (!options.tubs.asked()) return say_usage(which_tubs_sentence);
  auto log = session.open_existing_log();
  if (!log) return say(log.error());
  const auto contents = contents_for(**log, options.tubs);
  if (!contents) return say(contents.error());
  return print_tub_labels(session, **log, *contents, options.print, options.by);
}

}  // namespace

void add_sheet_command(Vocabulary& app, Session& session, Job& job) {
  auto options = std::make_shared<SheetOptions>();
  auto command = app.subcommand("sheet", "labels for tubs that are in the log");
  add_tub_options(command, options->tubs);
  command.option("--by", options->by, "who prints, for the log");
  add_sheet_options(command, options->print);
  add_output_options(command, options->print, "labels.pdf");
  add_proof_option(command, options->print);
  command.when_chosen(
      [&session, &job, options] { job = [&session, options] { return run(session, *options); }; });
}

}  // namespace rackside
