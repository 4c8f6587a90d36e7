// rackside-labels handover and returned: the plan of a cover, and the report after it, on paper.

#include <fmt/format.h>

#include <memory>

#include "core/code/code_of_name.hpp"
#include "core/overview/cover_reading.hpp"
#include "core/overview/return_reading.hpp"
#include "labels/handover/handover_sheet.hpp"
#include "labels/handover/return_sheet.hpp"
#include "labels/printer/lp_printer.hpp"
#include "labels/program/commands.hpp"
#include "labels/program/paper.hpp"
#include "labels/program/print_options.hpp"

namespace rackside {
namespace {

struct HandoverOptions {
  std::string who;
  std::string paper = "a4";
  PrintOptions print;
};

int print(const Flow& flow, const std::string& title, const HandoverOptions& options) {
  const PangoText text;
  LpPrinter printer;
  const auto where = deliver(pages_of(flow, text), title, destination_from(options.print),
                             {options.print.dots_per_inch}, printer);
  if (!where) return say(where.error());
  fmt::print("{}, {} page{}: {}\n", title, flow.pages.size(), flow.pages.size() == 1 ? "" : "s",
             *where);
  return exit_well;
}

int print_handover(Session& session, const HandoverOptions& options) {
  auto log = session.open_log(Access::Read);
  if (!log) return say(log.error());
  const auto read = read_cover_plan(**log, {options.who, {}}, session.clock().now());
  if (!read) return say(read.error());
  const Paper paper = papers().at(options.paper);
  const Code badge = code_of_name(CodeKind::Person, read->plan.cover.who);
  const PangoText text;
  return print(handover_sheet(read->plan, read->overview.collection, badge, paper.width,
                              paper.height, {options.print.dots_per_inch}, text),
               "Handover sheet for " + read->plan.cover.who, options);
}

int print_returned(Session& session, const HandoverOptions& options) {
  auto log = session.open_log(Access::Read);
  if (!log) return say(log.error());
  const auto read = read_return(**log, {options.who, {}}, session.clock().now());
  if (!read) return say(read.error());
  const Paper paper = papers().at(options.paper);
  const PangoText text;
  return print(
      return_sheet(read->report, paper.width, paper.height, {options.print.dots_per_inch}, text),
      "Report on the cover of " + read->report.cover.who, options);
}

std::shared_ptr<HandoverOptions> add_options(Vocabulary& command, const std::string& file) {
  auto options = std::make_shared<HandoverOptions>();
  command.option("--who", options->who, "the cover of this person");
  command.option("--paper", options->paper, "a4, a5 or letter")
      .one_of({"a4", "a5", "letter"})
      .shows_default();
  add_resolution_option(command, options->print);
  add_output_options(command, options->print, file);
  return options;
}

}  // namespace

void add_handover_command(Vocabulary& app, Session& session, Job& job) {
  auto command = app.subcommand(
      "handover", "the sheet for whoever stands in: what to do each day, rack by rack");
  auto options = add_options(command, "handover.pdf");
  command.when_chosen([&session, &job, options] {
    job = [&session, options] { return print_handover(session, *options); };
  });
}

void add_returned_command(Vocabulary& app, Session& session, Job& job) {
  auto command = app.subcommand("returned", "what was done and not done while somebody stood in");
  auto options = add_options(command, "returned.pdf");
  command.when_chosen([&session, &job, options] {
    job = [&session, options] { return print_returned(session, *options); };
  });
}

}  // namespace rackside
