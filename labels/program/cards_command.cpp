// rackside-labels cards: the wall sheet of action cards.

#include <fmt/format.h>

#include <memory>

#include "labels/cards/wall_sheet.hpp"
#include "labels/printer/lp_printer.hpp"
#include "labels/program/commands.hpp"
#include "labels/program/paper.hpp"
#include "labels/program/print_options.hpp"

namespace rackside {
namespace {

struct CardOptions {
  std::string paper = "a4";
  PrintOptions print;
};

int run(const CardOptions& options) {
  const Paper paper = papers().at(options.paper);
  const auto sheet = plan_wall_sheet(paper.width, paper.height, {options.print.dots_per_inch});
  if (!sheet) return say(sheet.error());
  const PangoText text;
  LpPrinter printer;
  const auto where =
      deliver(pages_of(*sheet, text), "Rackside action cards", destination_from(options.print),
              {options.print.dots_per_inch}, printer);
  if (!where) return say(where.error());
  fmt::print("{} action cards: {}\n", sheet->cards.size(), *where);
  return exit_well;
}

}  // namespace

void add_cards_command(Vocabulary& app, Session&, Job& job) {
  auto options = std::make_shared<CardOptions>();
  auto command =
      app.subcommand("cards", "the wall sheet of action cards: scan the tub, then the card");
  command.option("--paper", options->paper, "a4, a5 or letter")
      .one_of({"a4", "a5", "letter"})
      .shows_default();
  add_resolution_option(command, options->print);
  add_output_options(command, options->print, "cards.pdf");
  command.when_chosen([&job, options] { job = [options] { return run(*options); }; });
}

}  // namespace rackside
