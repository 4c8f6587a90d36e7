#include "labels/program/print_run.hpp"

#include <fmt/format.h>

#include "labels/batch/batch.hpp"

namespace rackside {
namespace {

std::string plural(std::size_t count, std::string_view word) {
  return fmt::format("{} {}{}", count, word, count == 1 ? "" : "s");
}

std::vector<Code> codes_of(const LabelSheet& sheet) {
  std::vector<Code> codes;
  for (const PlannedLabel& label : sheet.labels) codes.push_back(label.content.code);
  return codes;
}

void report(const LabelSheet& sheet, const std::string& where) {
  fmt::print("{} on {}: {}\n", plural(sheet.labels.size(), "label"),
             plural(static_cast<std::size_t>(sheet.page_count()), "page"), where);
  const std::string left_out = what_was_left_out(sheet);
  if (!left_out.empty()) fmt::print("No room for: {}.\n", left_out);
}

}  // namespace

int print_labels(Session& session, LogStore& log, const std::vector<LabelContent>& contents,
                 const PrintOptions& options, const std::string& by) {
  const auto settings = settings_from(session, options);
  if (!settings) return say(settings.error());
  const PangoText text;
  const auto sheet = plan_sheet(contents, *settings, text);
  if (!sheet) return say(sheet.error());
  const auto files =
      save_pages(pages_of(*sheet, text), "Rackside labels", options.out, settings->resolution);
  if (!files) return say(files.error());
  report(*sheet, fmt::format("{}", fmt::join(*files, ", ")));
  const auto marked = mark_printed(log, codes_of(*sheet), by, session.ids(), session.clock());
  if (!marked) return say(marked.error());
  return exit_well;
}

}  // namespace rackside
