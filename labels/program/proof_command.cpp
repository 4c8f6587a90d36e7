// rackside-labels proof: reads labels back before anybody prints them, and grades them.

#include <fmt/format.h>

#include <memory>

#include "labels/program/commands.hpp"
#include "labels/program/print_options.hpp"
#include "labels/program/tub_options.hpp"
#include "labels/proof/label_proof.hpp"

namespace rackside {
namespace {

struct ProofOptions {
  TubOptions tubs;
  PrintOptions print;
};

constexpr const char* about_the_estimate =
    "contrast, modulation and unused error correction are estimated in the manner of ISO/IEC "
    "15415\n"
    "from a simulated print with some ink spread and a scratch; they are no verifier's "
    "measurement.\n";

std::string graded(double percent, Grade grade) {
  return fmt::format("{:3.0f} % {}", percent, letter_of(grade));
}

void print_row(const PlannedLabel& label, const LabelProof& proof) {
  const SymbolSize& size = label.picture.symbol.size;
  const QualityEstimate& quality = proof.quality;
  fmt::print("{}  {}  {:2} dots {:.3f} mm  {:>8}  {:>8}  {:>8}  {}  {}\n", proof.code.grouped(),
             version_name(size.version), size.dots, size.module,
             graded(quality.contrast, quality.contrast_grade),
             graded(quality.modulation, quality.modulation_grade),
             graded(quality.unused, quality.unused_grade), letter_of(quality.overall()),
             proof.holds() ? "reads" : "DOES NOT READ: " + proof.failed_trials());
}

int run(Session& session, const ProofOptions& options) {
  if (!options.tubs.asked()) return say_usage(which_tubs_sentence);
  const auto settings = settings_from(session, options.print);
  if (!settings) return say(settings.error());
  auto log = session.open_log(Access::Read);
  if (!log) return say(log.error());
  const auto contents = contents_for(**log, options.tubs);
  if (!contents) return say(contents.error());
  const auto sheet = plan_sheet(*contents, *settings, PangoText());
  if (!sheet) return say(sheet.error());
  const auto proofs = prove_sheet(*sheet);
  fmt::print("code       symbol module            contrast  modulation  unused  all  read back\n");
  std::size_t failed = 0;
  for (std::size_t i = 0; i < proofs.size(); ++i) {
    print_row(sheet->labels[i], proofs[i]);
    failed += proofs[i].holds() ? 0 : 1;
  }
  fmt::print("{} of {} labels read in every trial.\n{}", proofs.size() - failed, proofs.size(),
             about_the_estimate);
  return failed == 0 ? exit_well : exit_failed;
}

}  // namespace

void add_proof_command(Vocabulary& app, Session& session, Job& job) {
  auto options = std::make_shared<ProofOptions>();
  auto command =
      app.subcommand("proof", "read labels back, unprinted, after the damage of a normal life");
  add_tub_options(command, options->tubs);
  add_sheet_options(command, options->print);
  command.when_chosen(
      [&session, &job, options] { job = [&session, options] { return run(session, *options); }; });
}

}  // namespace rackside
