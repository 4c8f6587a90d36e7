#include "core/interchange/take_over.hpp"

#include <algorithm>

namespace rackside {

Result<std::size_t> take_over_part(const ImportPlan& plan, std::size_t done, LogStore& log,
                                   Clock& clock) {
  const std::size_t end = std::min(plan.drafts.size(), done + import_part);
  const auto at = [&](std::size_t i) {
    return plan.drafts.begin() + static_cast<std::ptrdiff_t>(i);
  };
  return log.append({at(done), at(end)}, clock.now().utc).map([&](const auto&) { return end; });
}

Result<void> take_over(const ImportPlan& plan, LogStore& log, Clock& clock,
                       const std::function<void(std::size_t)>& between) {
  for (std::size_t done = 0; done < plan.drafts.size();) {
    const auto written = take_over_part(plan, done, log, clock);
    if (!written) return tl::unexpected(written.error());
    done = *written;
    between(done);
  }
  return {};
}

}  // namespace rackside
