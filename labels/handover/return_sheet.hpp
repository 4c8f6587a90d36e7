#pragma once
// The report for a keeper who comes back, on paper.

#include "core/cover/return_report.hpp"
#include "labels/handover/page_flow.hpp"

namespace rackside {

[[nodiscard]] Flow return_sheet(const ReturnReport& report, double width, double height,
                                Resolution resolution, const TextRuler& ruler);

}  // namespace rackside
