#pragma once
// Published moult records of other arthropods as evidence: who moulted between which two looks.

#include <filesystem>
#include <vector>

#include "core/forecast/evidence.hpp"

namespace rackside::tests {

/// Crickets looked at once a week at ten temperatures, one species a temperature. Kong,
/// Vadboncoeur, Bertram & MacMillan, doi:10.5281/zenodo.14681072 (CC BY 4.0), those at 20 to 30 C:
/// above, an instar is hardly longer than the time between two looks.
[[nodiscard]] std::vector<Evidence> cricket_records(const std::filesystem::path& file);

/// Red king crabs looked at daily, with the temperature of the water by their degree-days. Long,
/// Swiney, Harris, Page & Foy 2013, PLoS ONE 8(4):e60959 (CC0).
[[nodiscard]] std::vector<Evidence> crab_records(const std::filesystem::path& file);

}  // namespace rackside::tests
