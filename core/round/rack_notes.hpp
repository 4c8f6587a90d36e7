#pragma once
// What stands out about a whole rack: everybody refuses in the cold, moults are near in dry air.

#include "core/round/day_plan.hpp"

namespace rackside {

/// In walking order of the racks.
[[nodiscard]] std::vector<RackNote> rack_notes(const Collection& collection,
                                               const std::map<AnimalId, Forecast>& forecasts,
                                               const CareRules& rules, const RoomClimate& climate,
                                               Moment now, std::string_view rack);

}  // namespace rackside
