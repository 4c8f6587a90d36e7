#include "labels/program/print_run.hpp"

#include <fmt/format.h>

#include "labels/batch/batch.hpp"
#include "labels/printer/lp_printer.hpp"

namespace rackside {
namespace {

std::string plural(std::size_t count, std::string_view word) {
  return fmt::format("{} {}{}", count, word, count == 1 ? "" : "s");
}

void tell(const PrintOutcome& outcome) {
  for (const LabelProof& proof : outcome.held_back)
    fmt::print(stderr,
               "rackside-labels: {} was not printed: its label does not read back ({}). A larger "
               "label helps; --without-proof prints it all the same.\n",
               proof.code.grouped(), proof.failed_trials());
  if (outcome.printed.empty()) return;
  fmt::print("{} on {}: {}\n", plural(outcome.printed.size(), "label"),
             plural(static_cast<std::size_t>(outcome.pages), "page"), outcome.where);
  if (!outcome.left_out.empty()) fmt::print("No room for: {}.\n", outcome.left_out);
}

}  // namespace

int print_and_tell(Session& session, const std::vector<LabelContent>& contents,
                   const PrintOptions& options, const CameOut& came_out) {
  const auto settings = settings_from(session, options);
  if (!settings) return say(settings.error());
  const Destination destination = destination_from(options);
  if (const auto can = check_print(*settings, destination); !can) return say(can.error());
  LpPrinter printer;
  const auto outcome =
      print_labels(contents, *settings, options.without_proof ? Proving::None : Proving::Each,
                   destination, printer);
  if (!outcome) return say(outcome.error());
  tell(*outcome);
  if (outcome->printed.empty()) return exit_failed;
  if (const auto recorded = came_out(outcome->printed); !recorded) return say(recorded.error());
  return outcome->held_back.empty() ? exit_well : exit_failed;
}

int print_tub_labels(Session& session, LogStore& log, const std::vector<LabelContent>& contents,
                     const PrintOptions& options, const std::string& by) {
  return print_and_tell(session, contents, options, [&](const std::vector<Code>& tubs) {
    return mark_printed(log, tubs, by, session.ids(), session.clock());
  });
}

}  // namespace rackside
