#pragma once
// The plan of a cover, read from the log.

#include <string_view>

#include "core/cover/cover_plan.hpp"
#include "core/overview/overview.hpp"

namespace rackside {

struct CoverReading {
  Overview overview;
  CoverPlan plan;
};

/// The plan of the cover that holds or comes next, of `who` where that is not empty, as it looks
/// at `now`. Errors: NotFound when there is none; as LogStore::read_all.
[[nodiscard]] Result<CoverReading> read_cover_plan(LogStore& log, std::string_view who,
                                                   const Moment& now);

}  // namespace rackside
