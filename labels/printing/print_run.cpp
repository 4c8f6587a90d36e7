#include "labels/printing/print_run.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/code/code_of_name.hpp"

namespace rackside {
namespace {

// Takes the labels that do not read back out of `sheet`.
std::vector<LabelProof> hold_back(LabelSheet& sheet, const SheetSettings& settings,
                                  const TextRuler& ruler) {
  std::vector<LabelContent> good;
  std::vector<LabelProof> bad;
  auto proofs = prove_sheet(sheet);
  for (std::size_t i = 0; i < proofs.size(); ++i) {
    if (proofs[i].holds())
      good.push_back(sheet.labels[i].content);
    else
      bad.push_back(std::move(proofs[i]));
  }
  if (good.empty())
    sheet.labels.clear();
  else if (!bad.empty())
    sheet = plan_sheet(good, settings, ruler).value();
  return bad;
}

Result<std::string> to_file(const Pages& pages, const std::string& title, const std::string& path,
                            Resolution resolution) {
  const auto files = save_pages(pages, title, path, resolution);
  if (!files) return tl::unexpected(files.error());
  return fmt::format("{}", fmt::join(*files, ", "));
}

Result<std::string> to_printer(const Pages& pages, const std::string& title,
                               const std::string& queue, Printer& printer) {
  auto pdf = pdf_of(pages, title);
  if (!pdf) return tl::unexpected(pdf.error());
  const auto job = printer.print({queue, title, *std::move(pdf), pages.width, pages.height});
  if (!job) return tl::unexpected(job.error());
  return fmt::format("printer {} ({})", queue, *job);
}

}  // namespace

Result<void> check_print(const SheetSettings& settings, const Destination& destination) {
  if (const auto* file = std::get_if<ToFile>(&destination))
    if (const auto format = format_of(file->path); !format) return tl::unexpected(format.error());
  const LabelContent anything{.code = code_of_name(CodeKind::Enclosure, "anything")};
  const auto sheet = plan_sheet({anything}, settings, PangoText());
  if (!sheet) return tl::unexpected(sheet.error());
  return {};
}

Result<std::string> deliver(const Pages& pages, const std::string& title,
                            const Destination& destination, Resolution resolution,
                            Printer& printer) {
  if (const auto* file = std::get_if<ToFile>(&destination))
    return to_file(pages, title, file->path, resolution);
  return to_printer(pages, title, std::get<ToPrinter>(destination).queue, printer);
}

Result<PrintOutcome> print_labels(const std::vector<LabelContent>& contents,
                                  const SheetSettings& settings, Proving proving,
                                  const Destination& destination, Printer& printer) {
  const PangoText text;
  auto sheet = plan_sheet(contents, settings, text);
  if (!sheet) return tl::unexpected(sheet.error());
  PrintOutcome outcome;
  if (proving == Proving::Each) outcome.held_back = hold_back(*sheet, settings, text);
  if (sheet->labels.empty()) return outcome;
  auto where =
      deliver(pages_of(*sheet, text), "Rackside labels", destination, settings.resolution, printer);
  if (!where) return tl::unexpected(where.error());
  for (const PlannedLabel& label : sheet->labels) outcome.printed.push_back(label.content.code);
  outcome.pages = sheet->page_count();
  outcome.where = *std::move(where);
  outcome.left_out = what_was_left_out(*sheet);
  return outcome;
}

}  // namespace rackside
