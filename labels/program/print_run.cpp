#include "labels/program/print_run.hpp"

#include <fmt/format.h>

#include "core/code/code_of_name.hpp"
#include "labels/batch/batch.hpp"
#include "labels/program/delivery.hpp"
#include "labels/proof/label_proof.hpp"

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

// Takes the labels that do not read back out of `sheet`, names them, and says how many they were.
std::size_t hold_back(LabelSheet& sheet, const SheetSettings& settings, const TextRuler& ruler) {
  std::vector<LabelContent> good;
  const auto proofs = prove_sheet(sheet);
  for (std::size_t i = 0; i < proofs.size(); ++i) {
    if (proofs[i].holds())
      good.push_back(sheet.labels[i].content);
    else
      fmt::print(stderr,
                 "rackside-labels: {} was not printed: its label does not read back ({}). A larger "
                 "label helps; --without-proof prints it all the same.\n",
                 proofs[i].code.grouped(), proofs[i].failed_trials());
  }
  const std::size_t held_back = proofs.size() - good.size();
  if (good.empty())
    sheet.labels.clear();
  else if (held_back > 0)
    sheet = plan_sheet(good, settings, ruler).value();
  return held_back;
}

}  // namespace

Result<void> check_print(const Session& session, const PrintOptions& options) {
  const auto settings = settings_from(session, options);
  if (!settings) return tl::unexpected(settings.error());
  if (auto writable = check_output(options); !writable) return writable;
  const LabelContent anything{.code = code_of_name(CodeKind::Enclosure, "anything")};
  const auto sheet = plan_sheet({anything}, *settings, PangoText());
  if (!sheet) return tl::unexpected(sheet.error());
  return {};
}

int print_labels(Session& session, const std::vector<LabelContent>& contents,
                 const PrintOptions& options, const CameOut& came_out) {
  const auto settings = settings_from(session, options);
  if (!settings) return say(settings.error());
  if (const auto writable = check_output(options); !writable) return say(writable.error());
  const PangoText text;
  auto sheet = plan_sheet(contents, *settings, text);
  if (!sheet) return say(sheet.error());
  const std::size_t held_back = options.without_proof ? 0 : hold_back(*sheet, *settings, text);
  if (sheet->labels.empty()) return exit_failed;
  const auto where = deliver(pages_of(*sheet, text), "Rackside labels", options);
  if (!where) return say(where.error());
  report(*sheet, *where);
  if (const auto recorded = came_out(codes_of(*sheet)); !recorded) return say(recorded.error());
  return held_back == 0 ? exit_well : exit_failed;
}

int print_tub_labels(Session& session, LogStore& log, const std::vector<LabelContent>& contents,
                     const PrintOptions& options, const std::string& by) {
  return print_labels(session, contents, options, [&](const std::vector<Code>& tubs) {
    return mark_printed(log, tubs, by, session.ids(), session.clock());
  });
}

}  // namespace rackside
