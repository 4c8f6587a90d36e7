// rackside-labels sheet: labels for tubs that are in the log.

#include <fmt/format.h>

#include <memory>

#include "core/collection/collection.hpp"
#include "labels/batch/label_contents.hpp"
#include "labels/program/commands.hpp"
#include "labels/program/print_run.hpp"
#include "labels/sheet/stock_file.hpp"

namespace rackside {
namespace {

struct SheetOptions {
  std::vector<std::string> tubs;
  std::string rack;
  std::string shelf;
  std::string source;
  bool all = false;
  bool not_stuck_on = false;
  std::string by;
  PrintOptions print;
};

Result<TubSelection> selection_from(const SheetOptions& options) {
  if (!options.tubs.empty()) {
    TheseTubs these;
    for (const std::string& typed : options.tubs) {
      const auto code = parse_typed_code(typed);
      if (!code) return failure(code.error().kind, code.error().sentence, typed);
      if (code->kind() != CodeKind::Enclosure)
        return failure(ErrorKind::BadInput, fmt::format("{} is the code of a {}, not of a tub.",
                                                        code->grouped(), kind_word(code->kind())));
      these.codes.push_back(*code);
    }
    return these;
  }
  if (!options.rack.empty()) return TubsOnShelf{options.rack, options.shelf};
  if (!options.source.empty()) return TubsOfSource{options.source};
  return AllTubs{};
}

int run(Session& session, const SheetOptions& options) {
  const bool asked = !options.tubs.empty() || !options.rack.empty() || !options.source.empty() ||
                     options.all || options.not_stuck_on;
  if (!asked)
    return say_usage(
        "Say which tubs: --tub CODE, --rack R (and --shelf S), --source SAC, --all, or "
        "--not-stuck-on.");
  const auto selection = selection_from(options);
  if (!selection) return say(selection.error());
  auto log = session.open_log(Access::Write);
  if (!log) return say(log.error());
  auto roster = (*log)->read_kinds(roster_kinds());
  if (!roster) return say(roster.error());
  const Collection collection = fold_collection(*std::move(roster));
  const auto tubs = selected_tubs(collection, *selection,
                                  options.not_stuck_on ? StuckOn::NotYet : StuckOn::Either);
  if (!tubs) return say(tubs.error());
  return print_labels(session, **log, label_contents(collection, *tubs), options.print, options.by);
}

}  // namespace

void add_sheet_command(CLI::App& app, Session& session, Job& job) {
  auto options = std::make_shared<SheetOptions>();
  auto* command = app.add_subcommand("sheet", "labels for tubs that are in the log");
  auto* tub = command->add_option("--tub", options->tubs, "code of a tub; several may follow");
  auto* rack = command->add_option("--rack", options->rack, "all tubs of this rack");
  auto* shelf = command->add_option("--shelf", options->shelf, "only this shelf of the rack");
  auto* source =
      command->add_option("--source", options->source, "all living animals of this sac or source");
  auto* all = command->add_flag("--all", options->all, "all tubs");
  shelf->needs(rack);
  for (auto* one : {tub, rack, source, all})
    for (auto* other : {tub, rack, source, all})
      if (one != other) one->excludes(other);
  command->add_flag("--not-stuck-on", options->not_stuck_on,
                    "of these, only tubs whose label was not scanned since it was printed");
  command->add_option("--by", options->by, "who prints, for the log");
  add_sheet_options(*command, options->print);
  add_output_options(*command, options->print, "labels.pdf");
  command->callback(
      [&session, &job, options] { job = [&session, options] { return run(session, *options); }; });
}

namespace {

int list_sheets(const Session& session, const PrintOptions& options) {
  const auto stock = known_stock(session, options);
  if (!stock) return say(stock.error());
  for (const Stock& one : *stock) fmt::print("{:<18}{}\n", one.name, one.about);
  return exit_well;
}

}  // namespace

void add_sheets_command(CLI::App& app, Session& session, Job& job) {
  auto options = std::make_shared<PrintOptions>();
  auto* command = app.add_subcommand("sheets", "list the label sheets and rolls there are");
  command->add_option("--sheets-file", options->sheets_file,
                      "file of your own label sheets (default: label-sheets.toml beside the log)");
  command->callback([&session, &job, options] {
    job = [&session, options] { return list_sheets(session, *options); };
  });
}

}  // namespace rackside
