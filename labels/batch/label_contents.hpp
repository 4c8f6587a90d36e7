#pragma once
// From the collection to the words of its labels.

#include <string>
#include <variant>
#include <vector>

#include "core/collection/collection.hpp"
#include "labels/label/label_content.hpp"

namespace rackside {

struct TheseTubs {
  std::vector<Code> codes;
};
/// An empty shelf is the whole rack.
struct TubsOnShelf {
  std::string rack;
  std::string shelf;
};
/// The living animals of one sac or source.
struct TubsOfSource {
  std::string source;
};
struct AllTubs {};

using TubSelection = std::variant<TheseTubs, TubsOnShelf, TubsOfSource, AllTubs>;

enum class StuckOn {
  Either,
  NotYet,  // the label was never printed, or not scanned since
};

/// TheseTubs in the order given, all others in the order of a walk along the racks. Errors:
/// NotFound when a tub is unknown or nothing is left to print.
[[nodiscard]] Result<std::vector<Code>> selected_tubs(const Collection& collection,
                                                      const TubSelection& selection,
                                                      StuckOn stuck_on);

/// What the label of this tub says: who lives there, or the code alone when nobody does.
[[nodiscard]] LabelContent label_content(const Collection& collection, const Code& tub);
[[nodiscard]] std::vector<LabelContent> label_contents(const Collection& collection,
                                                       const std::vector<Code>& tubs);

}  // namespace rackside
