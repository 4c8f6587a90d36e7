#pragma once
// The plan of a cover, read from the log.

#include <functional>
#include <optional>
#include <string>

#include "core/cover/cover_plan.hpp"
#include "core/overview/overview.hpp"

namespace rackside {

/// Told now and then how much of the work is done, from 0 to 1; may be empty.
using HowFar = std::function<void(double)>;

/// How a cover is asked for.
struct WhichCover {
  std::string who;  // empty: anybody
  std::optional<EventId> id;
};

struct CoverReading {
  Overview overview;
  CoverPlan plan;
};

/// The plan, as it looks at `now`, of the cover that is asked for; where only a person is named or
/// nobody, of the one that holds or comes next. Errors: NotFound when there is none; as
/// LogStore::read_all.
[[nodiscard]] Result<CoverReading> read_cover_plan(LogStore& log, const WhichCover& which,
                                                   const Moment& now, const Wording& wording = {},
                                                   const HowFar& how_far = {});

}  // namespace rackside
