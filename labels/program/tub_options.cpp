#include "labels/program/tub_options.hpp"

#include <fmt/format.h>

#include "core/collection/collection.hpp"

namespace rackside {
namespace {

Result<Code> tub_code(const std::string& typed) {
  const auto code = parse_typed_code(typed);
  if (!code) return failure(code.error().kind, code.error().sentence, typed);
  if (code->kind() == CodeKind::Enclosure) return *code;
  return failure(ErrorKind::BadInput, fmt::format("{} is the code of a {}, not of a tub.",
                                                  code->grouped(), kind_word(code->kind())));
}

Result<TubSelection> selection_from(const TubOptions& options) {
  if (!options.rack.empty()) return TubsOnShelf{options.rack, options.shelf};
  if (!options.source.empty()) return TubsOfSource{options.source};
  if (options.tubs.empty()) return AllTubs{};
  TheseTubs these;
  for (const std::string& typed : options.tubs) {
    const auto code = tub_code(typed);
    if (!code) return tl::unexpected(code.error());
    these.codes.push_back(*code);
  }
  return these;
}

}  // namespace

void add_tub_options(Vocabulary& command, TubOptions& options) {
  const auto tub = command.option("--tub", options.tubs, "code of a tub; several may follow");
  const auto rack = command.option("--rack", options.rack, "all tubs of this rack");
  command.option("--shelf", options.shelf, "only this shelf of the rack").needs(rack);
  const auto source =
      command.option("--source", options.source, "all living animals of this sac or source");
  const auto all = command.flag("--all", options.all, "all tubs");
  command.allow_one_of({tub, rack, source, all});
  command.flag("--not-stuck-on", options.not_stuck_on,
               "of these, only tubs whose label was not scanned since it was printed");
}

Result<std::vector<LabelContent>> contents_for(LogStore& log, const TubOptions& options) {
  const auto selection = selection_from(options);
  if (!selection) return tl::unexpected(selection.error());
  auto roster = log.read_kinds(roster_kinds());
  if (!roster) return tl::unexpected(roster.error());
  const Collection collection = fold_collection(*std::move(roster));
  const auto tubs = selected_tubs(collection, *selection,
                                  options.not_stuck_on ? StuckOn::NotYet : StuckOn::Either);
  if (!tubs) return tl::unexpected(tubs.error());
  return label_contents(collection, *tubs);
}

}  // namespace rackside
