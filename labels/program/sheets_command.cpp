// rackside-labels sheets: what can be printed on.

#include <fmt/format.h>

#include <memory>

#include "labels/program/commands.hpp"
#include "labels/program/print_options.hpp"

namespace rackside {
namespace {

int run(const Session& session, const PrintOptions& options) {
  const auto stock = known_stock(session, options);
  if (!stock) return say(stock.error());
  for (const Stock& one : *stock) fmt::print("{:<18}{}\n", one.name, one.about);
  return exit_well;
}

}  // namespace

void add_sheets_command(Vocabulary& app, Session& session, Job& job) {
  auto options = std::make_shared<PrintOptions>();
  auto command = app.subcommand("sheets", "list the label sheets and rolls there are");
  add_sheets_file_option(command, *options);
  command.when_chosen(
      [&session, &job, options] { job = [&session, options] { return run(session, *options); }; });
}

}  // namespace rackside
