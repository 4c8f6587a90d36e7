#pragma once
// The report for a keeper who comes back, read from the log.

#include "core/cover/return_report.hpp"
#include "core/overview/cover_reading.hpp"

namespace rackside {

struct ReturnReading {
  Overview overview;  // as things stand now
  ReturnReport report;
};

/// What happened until its last day or `now` in the cover that is asked for; where only a person is
/// named or nobody, in the one that began last. Errors: NotFound when none has begun; as
/// LogStore::read_all.
[[nodiscard]] Result<ReturnReading> read_return(LogStore& log, const WhichCover& which,
                                                const Moment& now, const Wording& wording = {},
                                                const HowFar& how_far = {});

}  // namespace rackside
