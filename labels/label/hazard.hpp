#pragma once
// Which species put a warning sign on their label. The table is hazards.toml: a caution, not a
// complete list.

#include <string>
#include <string_view>

#include "labels/label/label_content.hpp"

namespace rackside {

/// By the genus, the first word of `species`; None for a genus that is not in the table.
[[nodiscard]] Hazard hazard_of(std::string_view species);

/// "strong venom", "irritating hairs", "venom, hairs"; empty for None.
[[nodiscard]] std::string_view hazard_words(Hazard hazard);
/// The same in one short word each.
[[nodiscard]] std::string_view hazard_short_words(Hazard hazard);

}  // namespace rackside
