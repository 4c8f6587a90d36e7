#include "kiosk/shell/label_press.hpp"

#include <fmt/format.h>

#include "core/values/time.hpp"
#include "labels/printing/beside_log.hpp"
#include "labels/sheet/stock_file.hpp"

namespace rackside::kiosk {
namespace {

std::string plural(std::size_t count, std::string_view word) {
  return fmt::format("{} {}{}", count, word, count == 1 ? "" : "s");
}

// A name that no earlier file has.
std::filesystem::path fresh_file(const std::filesystem::path& folder, const Moment& now) {
  const std::string day = format_day(now.day());
  auto path = folder / fmt::format("labels-{}.pdf", day);
  for (int i = 2; std::filesystem::exists(path); ++i)
    path = folder / fmt::format("labels-{}-{}.pdf", day, i);
  return path;
}

}  // namespace

Result<PrintOutcome> LabelPress::print(const std::vector<LabelContent>& contents,
                                       const Settings& settings, const Moment& now) {
  const auto stock = stock_beside(log_).and_then(
      [&](const std::vector<Stock>& all) { return stock_named(all, settings.label_sheet); });
  if (!stock) return tl::unexpected(stock.error());
  const auto offsets = read_offsets(offsets_beside(log_));
  if (!offsets) return tl::unexpected(offsets.error());
  const SheetSettings sheet{*stock,
                            {settings.printer_dpi},
                            offset_for(*offsets, settings.printer, settings.label_sheet),
                            0};
  Destination destination = ToPrinter{settings.printer};
  if (settings.printer.empty()) destination = ToFile{fresh_file(log_.parent_path(), now).string()};
  return print_labels(contents, sheet, Proving::Each, destination, *printer_);
}

PrintersFound LabelPress::choices() {
  PrintersFound found;
  const auto queues = printer_->queues();
  if (!queues) found.sentence = queues.error().sentence;
  if (queues)
    for (const PrinterQueue& queue : *queues) found.queues.push_back(queue.name);
  const auto stock = stock_beside(log_);
  for (const Stock& one : stock ? *stock : built_in_stock()) found.sheets.push_back(one.name);
  return found;
}

std::string print_words(const PrintOutcome& outcome) {
  std::string words =
      fmt::format("{} on {}: {}.", plural(outcome.printed.size(), "label"),
                  plural(static_cast<std::size_t>(outcome.pages), "page"), outcome.where);
  if (!outcome.held_back.empty())
    words += fmt::format(" {} did not read back and {} not printed: choose a larger label.",
                         plural(outcome.held_back.size(), "label"),
                         outcome.held_back.size() == 1 ? "was" : "were");
  return words;
}

}  // namespace rackside::kiosk
