#pragma once
// When somebody would have noticed a shed, and what follows for the moults on record.

#include "core/forecast/evidence.hpp"

namespace rackside {

struct VisitWithFood {
  double day = 0;
  bool took = false;
};

/// Fills in `visits`, which observations were among them, and since when each shed that was found
/// may have lain there. A keeper who writes down looks would have noticed it then. Where looks are
/// rare, offers are the visits. A meal taken shows in any case that the skin was hard at the time.
void settle_visits(Evidence& evidence, const std::vector<double>& looks,
                   const std::vector<VisitWithFood>& offers);

/// Marks what was observed in the cold as unsettled.
void mark_cold(Evidence& evidence);

}  // namespace rackside
