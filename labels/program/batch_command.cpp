// rackside-labels batch: a pulled sac goes into tubs.

#include <fmt/format.h>

#include <memory>

#include "core/collection/collection.hpp"
#include "core/collection/place.hpp"
#include "labels/batch/batch.hpp"
#include "labels/batch/label_contents.hpp"
#include "labels/program/commands.hpp"
#include "labels/program/print_run.hpp"

namespace rackside {
namespace {

struct BatchOptions {
  BatchRequest request;
  std::string date;
  PrintOptions print;
};

int run(Session& session, const BatchOptions& options) {
  BatchRequest request = options.request;
  request.date = session.clock().now().day();
  if (!options.date.empty()) {
    const auto day = parse_day(options.date);
    if (!day) return say(day.error());
    request.date = *day;
  }
  // What would keep the labels from being printed is said before anything is written.
  const auto settings = settings_from(session, options.print);
  if (!settings) return say(settings.error());
  if (const auto can = check_print(*settings, destination_from(options.print)); !can)
    return say(can.error());
  auto log = session.open_log(Access::Write);
  if (!log) return say(log.error());
  const auto batch = make_batch(**log, request, session.ids(), session.clock());
  if (!batch) return say(batch.error());
  fmt::print("{} tubs with their animals are in the log, {} to {}.\n", batch->tubs.size(),
             batch->tubs.front().grouped(), batch->tubs.back().grouped());
  std::fflush(stdout);
  auto roster = (*log)->read_kinds(roster_kinds());
  if (!roster) return say(roster.error());
  const auto contents = label_contents(fold_collection(*std::move(roster)), batch->tubs);
  const int code = print_tub_labels(session, **log, contents, options.print, request.by);
  if (code != exit_well)
    fmt::print(stderr,
               "The batch itself is in the log. Print its labels with: rackside-labels sheet "
               "--not-stuck-on\n");
  return code;
}

}  // namespace

void add_batch_command(Vocabulary& app, Session& session, Job& job) {
  auto options = std::make_shared<BatchOptions>();
  BatchRequest& request = options->request;
  auto command = app.subcommand("batch", "tubs, animals and labels for a new batch of slings");
  command.option("--species", request.species, "genus and species").required();
  command.option("--count", request.count, "how many tubs").required();
  command.option("--source", request.source, "the sac, or who they came from");
  command.option("--common-name", request.common_name, "the name in the trade");
  command.option("--instar", request.instar, "instar on that day");
  command.option("--date", options->date, "day pulled or acquired, YYYY-MM-DD (default: today)");
  command.option("--rack", request.first.rack, "rack of the first tub");
  command.option("--shelf", request.first.shelf, "shelf of the first tub");
  command.option("--position", request.first.position,
                 "position of the first tub; the others count up from it");
  command.option("--per-shelf", request.tubs_on_a_shelf,
                 "go on to the next shelf after so many tubs");
  command.option("--key", request.key, "call the animals KEY-001 and on (default: the source)");
  command.option("--by", request.by, "who does it, for the log");
  add_sheet_options(command, options->print);
  add_output_options(command, options->print, "labels.pdf");
  add_proof_option(command, options->print);
  command.when_chosen(
      [&session, &job, options] { job = [&session, options] { return run(session, *options); }; });
}

}  // namespace rackside
