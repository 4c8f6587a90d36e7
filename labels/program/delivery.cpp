#include "labels/program/delivery.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "labels/printer/lp_printer.hpp"

namespace rackside {

Result<void> check_output(const PrintOptions& options) {
  if (!options.printer.empty()) return {};
  const auto format = format_of(options.out);
  if (!format) return tl::unexpected(format.error());
  return {};
}

Result<std::string> deliver(const Pages& pages, const std::string& title,
                            const PrintOptions& options) {
  if (options.printer.empty()) {
    const auto files = save_pages(pages, title, options.out, {options.dots_per_inch});
    if (!files) return tl::unexpected(files.error());
    return fmt::format("{}", fmt::join(*files, ", "));
  }
  auto pdf = pdf_of(pages, title);
  if (!pdf) return tl::unexpected(pdf.error());
  LpPrinter printer;
  const auto job =
      printer.print({options.printer, title, *std::move(pdf), pages.width, pages.height});
  if (!job) return tl::unexpected(job.error());
  return fmt::format("printer {} ({})", options.printer, *job);
}

}  // namespace rackside
