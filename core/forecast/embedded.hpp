#pragma once
// The two data files of this room as they were when the program was built, so that nothing at run
// time depends on where they stand.

#include <string_view>

namespace rackside {

[[nodiscard]] std::string_view embedded_priors();
[[nodiscard]] std::string_view embedded_species_traits();

}  // namespace rackside
