#pragma once
// The report for a keeper who comes back, read from the log.

#include <string_view>

#include "core/cover/return_report.hpp"
#include "core/overview/overview.hpp"

namespace rackside {

struct ReturnReading {
  Overview overview;  // as things stand now
  ReturnReport report;
};

/// What happened in the cover that began last, of `who` where that is not empty, until its last day
/// or `now`. Errors: NotFound when none has begun; as LogStore::read_all.
[[nodiscard]] Result<ReturnReading> read_return(LogStore& log, std::string_view who,
                                                const Moment& now);

}  // namespace rackside
