#include "core/overview/cover_reading.hpp"

#include "core/cover/days.hpp"

namespace rackside {

Result<CoverReading> read_cover_plan(LogStore& log, std::string_view who, const Moment& now) {
  Forecaster forecaster;
  auto whole = read_overview(log, forecaster, now, Until::AsOf);
  if (!whole) return tl::unexpected(whole.error());
  const Cover* cover = whole->cover.on_or_after(now.day(), who);
  if (cover == nullptr)
    return failure(ErrorKind::NotFound,
                   who.empty() ? "No cover is planned for today or later."
                               : "No cover of that person is planned for today or later.");
  const Outlook outlook = forecaster.ahead(days_until(now, cover->last_day()));
  const Known known{whole->collection, whole->rules, whole->climate, whole->cover, outlook};
  CoverPlan plan = plan_cover(known, *cover);
  return CoverReading{*std::move(whole), std::move(plan)};
}

}  // namespace rackside
