#include "kiosk/shell/label_press.hpp"

#include <fmt/format.h>

#include "core/people/people.hpp"
#include "core/values/time.hpp"
#include "labels/handover/handover_sheet.hpp"
#include "labels/handover/return_sheet.hpp"
#include "labels/printing/beside_log.hpp"
#include "labels/sheet/stock_file.hpp"

namespace rackside::kiosk {
namespace {

std::string plural(std::size_t count, std::string_view word) {
  return fmt::format("{} {}{}", count, word, count == 1 ? "" : "s");
}

// A name that no earlier file has.
std::filesystem::path fresh_file(const std::filesystem::path& folder, std::string_view what,
                                 const Moment& now) {
  const std::string day = format_day(now.day());
  auto path = folder / fmt::format("{}-{}.pdf", what, day);
  for (int i = 2; std::filesystem::exists(path); ++i)
    path = folder / fmt::format("{}-{}-{}.pdf", what, day, i);
  return path;
}

// What is in the printer, as setup has it.
Result<Stock> stock_in(const std::filesystem::path& log, const Settings& settings) {
  return stock_beside(log).and_then(
      [&](const std::vector<Stock>& all) { return stock_named(all, settings.label_sheet); });
}

// What a page of text needs: less than A5 holds no line of it.
bool holds_text(const Stock& stock) {
  return stock.shape == StockShape::Sheet && stock.page_width >= 148 && stock.page_height >= 210;
}

}  // namespace

Result<PrintOutcome> LabelPress::print(const std::vector<LabelContent>& contents,
                                       const Settings& settings, const Moment& now) {
  const auto stock = stock_in(log_, settings);
  if (!stock) return tl::unexpected(stock.error());
  const auto offsets = read_offsets(offsets_beside(log_));
  if (!offsets) return tl::unexpected(offsets.error());
  const SheetSettings sheet{*stock,
                            {settings.printer_dpi},
                            offset_for(*offsets, settings.printer, settings.label_sheet),
                            0};
  Destination destination = ToPrinter{settings.printer};
  if (settings.printer.empty())
    destination = ToFile{fresh_file(log_.parent_path(), "labels", now).string()};
  return print_labels(contents, sheet, Proving::Each, destination, *printer_);
}

Result<LabelPress::Paper> LabelPress::paper_for(const Settings& settings) const {
  const auto stock = stock_in(log_, settings);
  if (!stock) return tl::unexpected(stock.error());
  if (!holds_text(*stock)) return Paper{210, 297, {}};  // A4
  return Paper{stock->page_width, stock->page_height, settings.printer};
}

Result<std::string> LabelPress::print(const Flow& flow, const Paper& paper, std::string_view name,
                                      const std::string& title, const Settings& settings,
                                      const Moment& now) {
  Destination destination = ToPrinter{paper.printer};
  if (paper.printer.empty())
    destination = ToFile{fresh_file(log_.parent_path(), name, now).string()};
  const PangoText text;
  return deliver(pages_of(flow, text), title, destination, {settings.printer_dpi}, *printer_)
      .map([&](const std::string& where) {
        return fmt::format("{}, {}: {}.", title, plural(flow.pages.size(), "page"), where);
      });
}

Result<std::string> LabelPress::print_handover(const CoverReading& reading,
                                               const Settings& settings, const Moment& now) {
  const auto paper = paper_for(settings);
  if (!paper) return tl::unexpected(paper.error());
  const std::string& who = reading.plan.cover.who;
  const PangoText text;
  const Flow flow = handover_sheet(reading.plan, reading.overview.collection, badge_of(who),
                                   paper->width, paper->height, {settings.printer_dpi}, text);
  return print(flow, *paper, "handover", "The sheet for " + who, settings, now);
}

Result<std::string> LabelPress::print_return(const ReturnReport& report, const Settings& settings,
                                             const Moment& now) {
  const auto paper = paper_for(settings);
  if (!paper) return tl::unexpected(paper.error());
  const PangoText text;
  const Flow flow = return_sheet(report, paper->width, paper->height, {settings.printer_dpi}, text);
  return print(flow, *paper, "returned", "The report on " + report.cover.who, settings, now);
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
