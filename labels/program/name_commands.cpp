// rackside-labels shelves and badges: labels for what has a name of its own.

#include <memory>

#include "core/collection/collection.hpp"
#include "labels/cards/name_cards.hpp"
#include "labels/program/commands.hpp"
#include "labels/program/print_run.hpp"

namespace rackside {
namespace {

struct ShelfOptions {
  std::string rack;
  std::vector<std::string> shelves;
  PrintOptions print;
};

struct BadgeOptions {
  std::vector<std::string> people;
  PrintOptions print;
};

Result<void> nothing_to_record(const std::vector<Code>&) { return {}; }

Result<std::vector<ShelfName>> shelves_from(const Session& session, const ShelfOptions& options) {
  std::vector<ShelfName> shelves;
  for (const std::string& shelf : options.shelves) shelves.push_back({options.rack, shelf});
  if (!shelves.empty()) return shelves;
  auto log = session.open_log(Access::Read);
  if (!log) return tl::unexpected(log.error());
  auto roster = (*log)->read_kinds(roster_kinds());
  if (!roster) return tl::unexpected(roster.error());
  for (const ShelfName& shelf : shelves_in(fold_collection(*std::move(roster))))
    if (options.rack.empty() || shelf.rack == options.rack) shelves.push_back(shelf);
  if (shelves.empty())
    return failure(ErrorKind::NotFound,
                   "No tub in this log stands on such a shelf. Name one with --rack and --shelf.");
  return shelves;
}

int print_shelves(Session& session, const ShelfOptions& options) {
  const auto shelves = shelves_from(session, options);
  if (!shelves) return say(shelves.error());
  std::vector<LabelContent> contents;
  for (const ShelfName& shelf : *shelves) contents.push_back(shelf_label(shelf));
  return print_and_tell(session, contents, options.print, nothing_to_record);
}

int print_badges(Session& session, const BadgeOptions& options) {
  std::vector<LabelContent> contents;
  for (const std::string& person : options.people) contents.push_back(badge(person));
  return print_and_tell(session, contents, options.print, nothing_to_record);
}

void add_print_options(Vocabulary& command, PrintOptions& options, const std::string& file) {
  options.sheet = "a4-3x8";
  add_sheet_options(command, options);
  add_output_options(command, options, file);
  add_proof_option(command, options);
}

}  // namespace

void add_shelves_command(Vocabulary& app, Session& session, Job& job) {
  auto options = std::make_shared<ShelfOptions>();
  auto command = app.subcommand("shelves", "labels for shelves: all where a tub stands, or some");
  const auto rack = command.option("--rack", options->rack, "only this rack");
  command.option("--shelf", options->shelves, "this shelf of the rack; several may follow")
      .needs(rack);
  add_print_options(command, options->print, "shelves.pdf");
  command.when_chosen([&session, &job, options] {
    job = [&session, options] { return print_shelves(session, *options); };
  });
}

void add_badges_command(Vocabulary& app, Session& session, Job& job) {
  auto options = std::make_shared<BadgeOptions>();
  auto command = app.subcommand("badges", "badges for people who record");
  command.option("names", options->people, "names, as they stand in the log").required();
  add_print_options(command, options->print, "badges.pdf");
  command.when_chosen([&session, &job, options] {
    job = [&session, options] { return print_badges(session, *options); };
  });
}

}  // namespace rackside
