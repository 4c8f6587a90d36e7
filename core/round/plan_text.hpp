#pragma once
// The day's plan on paper and for other programs: the same facts twice.

#include <string>

#include "core/round/preparation.hpp"

namespace rackside {

/// For people: what to carry, then shelf by shelf what is due and why, then what waits and what is
/// to be left alone.
[[nodiscard]] std::string plan_as_text(const DayPlan& plan, const Preparation& ready,
                                       const Collection& collection);

/// One JSON object with `day`, `prepare`, `notes`, `due`, `wait` and `leave_alone`; the last three
/// are lists in walking order.
[[nodiscard]] std::string plan_as_json(const DayPlan& plan, const Preparation& ready,
                                       const Collection& collection);

}  // namespace rackside
