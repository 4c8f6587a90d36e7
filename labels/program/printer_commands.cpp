// rackside-labels printers and calibrate: what there is to print with, and where it really prints.

#include <fmt/format.h>

#include <memory>

#include "core/file/save_file.hpp"
#include "labels/calibration/calibration_page.hpp"
#include "labels/printer/lp_printer.hpp"
#include "labels/program/commands.hpp"
#include "labels/program/print_options.hpp"

namespace rackside {
namespace {

struct CalibrateOptions {
  std::string remember;
  std::string of_printer;
  PrintOptions print;
};

int list_printers() {
  LpPrinter printer;
  const auto queues = printer.queues();
  if (!queues) return say(queues.error());
  for (const PrinterQueue& queue : *queues)
    fmt::print("{}{}\n", queue.name, queue.usual ? "  (the usual one)" : "");
  return exit_well;
}

int remember(const Session& session, const CalibrateOptions& options) {
  const auto offset = parse_offset(options.remember);
  if (!offset) return say(offset.error());
  // A sheet that does not exist would keep an offset for nobody.
  if (const auto settings = settings_from(session, options.print); !settings)
    return say(settings.error());
  const auto kept = kept_offsets(session);
  if (!kept) return say(kept.error());
  const auto file = offsets_file(session);
  if (!file) return say(file.error());
  const auto all = with_offset(*kept, {options.of_printer, options.print.sheet, *offset});
  if (const auto saved = save_file(file->string(), format_offsets(all)); !saved)
    return say(saved.error());
  fmt::print("Kept: \"{}\"{} moves by {:g} mm right and {:g} mm down.\n", options.print.sheet,
             options.of_printer.empty() ? "" : " on " + options.of_printer, offset->right,
             offset->down);
  return exit_well;
}

int calibrate(const Session& session, const CalibrateOptions& options) {
  if (!options.remember.empty()) return remember(session, options);
  const auto settings = settings_from(session, options.print);
  if (!settings) return say(settings.error());
  const PangoText text;
  LpPrinter printer;
  const auto where = deliver(calibration_page(*settings, text), "Rackside calibration",
                             destination_from(options.print), settings->resolution, printer);
  if (!where) return say(where.error());
  fmt::print("Calibration page of \"{}\": {}\n", settings->stock.name, *where);
  return exit_well;
}

}  // namespace

void add_printers_command(Vocabulary& app, Session&, Job& job) {
  auto command = app.subcommand("printers", "list the printers there are");
  command.when_chosen([&job] { job = list_printers; });
}

void add_calibrate_command(Vocabulary& app, Session& session, Job& job) {
  auto options = std::make_shared<CalibrateOptions>();
  auto command = app.subcommand(
      "calibrate", "a page with rulers and cell outlines, and the offset that it shows");
  command.option("--remember", options->remember,
                 "keep RIGHT,DOWN millimetres for this sheet, for every later print");
  command.option("--for-printer", options->of_printer,
                 "with --remember: for this printer queue, not for files");
  add_sheet_options(command, options->print);
  add_output_options(command, options->print, "calibration.pdf");
  command.when_chosen([&session, &job, options] {
    job = [&session, options] { return calibrate(session, *options); };
  });
}

}  // namespace rackside
