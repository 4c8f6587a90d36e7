#pragma once
// The handover sheet for the wall: the plan of a cover by day and rack, with what to beware of,
// whom to call and the codes to scan. Black on white throughout.

#include "core/cover/cover_plan.hpp"
#include "labels/handover/page_flow.hpp"

namespace rackside {

/// `badge` is the stand-in's. A page of at least A5 is needed.
[[nodiscard]] Flow handover_sheet(const CoverPlan& plan, const Collection& collection,
                                  const Code& badge, double width, double height,
                                  Resolution resolution, const TextRuler& ruler);

}  // namespace rackside
