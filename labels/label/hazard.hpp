#pragma once
// Which species put a warning sign on their label: those of which core/care says that their venom
// is medically significant or their hairs are heavy. A caution, not a complete list.

#include <string>
#include <string_view>

#include "labels/label/label_content.hpp"

namespace rackside {

/// None also for a genus that the table of cautions does not know.
[[nodiscard]] Hazard hazard_of(std::string_view species);

/// "strong venom", "irritating hairs", "venom, hairs"; empty for None.
[[nodiscard]] std::string_view hazard_words(Hazard hazard);
/// The same in one short word each.
[[nodiscard]] std::string_view hazard_short_words(Hazard hazard);

}  // namespace rackside
