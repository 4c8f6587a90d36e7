#include "labels/program/print_options.hpp"

#include <fmt/format.h>

#include <sstream>

#include "labels/printing/beside_log.hpp"
#include "labels/sheet/stock_file.hpp"

namespace rackside {
namespace {

constexpr int least_dpi = 150;
constexpr int most_dpi = 2400;

Result<PrintOffset> offset_from(const Session& session, const PrintOptions& options) {
  if (!options.offset.empty()) return parse_offset(options.offset);
  const auto kept = kept_offsets(session);
  if (!kept) return tl::unexpected(kept.error());
  return offset_for(*kept, options.printer, options.sheet);
}

}  // namespace

void add_sheet_options(Vocabulary& command, PrintOptions& options) {
  command
      .option("--sheet", options.sheet,
              "kind of label sheet or roll; `rackside-labels sheets` lists them")
      .shows_default();
  add_sheets_file_option(command, options);
  add_resolution_option(command, options);
  command
      .option("--start", options.start,
              "first free cell of a used sheet: its number, or ROW,COLUMN")
      .shows_default();
  command.option("--offset", options.offset,
                 "move everything by RIGHT,DOWN millimetres, as the calibration page tells");
}

void add_resolution_option(Vocabulary& command, PrintOptions& options) {
  command.option("--dpi", options.dots_per_inch, "dots an inch of the printer: 203, 300, 600")
      .within(least_dpi, most_dpi)
      .shows_default();
}

void add_sheets_file_option(Vocabulary& command, PrintOptions& options) {
  command.option("--sheets-file", options.sheets_file,
                 "file of your own label sheets (default: label-sheets.toml beside the log)");
}

void add_proof_option(Vocabulary& command, PrintOptions& options) {
  command.flag("--without-proof", options.without_proof,
               "print without reading every label back first");
}

void add_output_options(Vocabulary& command, PrintOptions& options,
                        const std::string& default_file) {
  options.out = default_file;
  const auto out =
      command.option("-o,--out", options.out, "file to write: .pdf, .svg or .png").shows_default();
  command
      .option("--printer", options.printer,
              "send to this printer queue instead; `rackside-labels printers` lists them")
      .excludes(out);
}

Result<std::vector<Stock>> known_stock(const Session& session, const PrintOptions& options) {
  if (options.sheets_file.empty()) {
    const auto log = session.log_path();
    return log ? stock_beside(*log) : built_in_stock();
  }
  const auto text = text_of_file(options.sheets_file);
  if (!text) return tl::unexpected(text.error());
  const auto own = parse_stock(*text, options.sheets_file);
  if (!own) return tl::unexpected(own.error());
  return with_own(built_in_stock(), *own);
}

Result<SheetSettings> settings_from(const Session& session, const PrintOptions& options) {
  const auto stock = known_stock(session, options).and_then([&](const std::vector<Stock>& all) {
    return stock_named(all, options.sheet);
  });
  if (!stock) return tl::unexpected(stock.error());
  const auto cell = parse_cell(*stock, options.start);
  if (!cell) return tl::unexpected(cell.error());
  const auto offset = offset_from(session, options);
  if (!offset) return tl::unexpected(offset.error());
  return SheetSettings{*stock, {options.dots_per_inch}, *offset, *cell};
}

Result<std::filesystem::path> offsets_file(const Session& session) {
  const auto log = session.log_path();
  if (!log) return tl::unexpected(log.error());
  return offsets_beside(*log);
}

Result<std::vector<KeptOffset>> kept_offsets(const Session& session) {
  const auto file = offsets_file(session);
  if (!file) return std::vector<KeptOffset>{};
  return read_offsets(*file);
}

Destination destination_from(const PrintOptions& options) {
  if (!options.printer.empty()) return ToPrinter{options.printer};
  return ToFile{options.out};
}

Result<PrintOffset> parse_offset(const std::string& text) {
  if (text.empty()) return PrintOffset{};
  PrintOffset offset;
  char comma = 0;
  std::istringstream in(text);
  in.imbue(std::locale::classic());
  if (in >> offset.right >> comma >> offset.down && comma == ',' && in.peek() == EOF) return offset;
  return failure(
      ErrorKind::BadInput,
      fmt::format("\"{}\" is no offset; say RIGHT,DOWN in millimetres, such as 0.5,-0.3.", text));
}

}  // namespace rackside
