#include "core/overview/cover_reading.hpp"

#include "core/cover/days.hpp"

namespace rackside {
namespace {

// Of the whole time, as measured with 2,000 tubs.
constexpr double reading_takes = 0.7;

}  // namespace

Result<CoverReading> read_cover_plan(LogStore& log, const WhichCover& which, const Moment& now,
                                     const Wording& wording, const HowFar& how_far) {
  Forecaster forecaster;
  auto whole = read_overview(log, forecaster, now, Until::Everything);
  if (!whole) return tl::unexpected(whole.error());
  if (how_far) how_far(reading_takes);
  whole->rules.collection.wording = wording;
  const Cover* cover =
      which.id ? whole->cover.cover(*which.id) : whole->cover.on_or_after(now.day(), which.who);
  if (cover == nullptr || cover->last_day() < now.day())
    return failure(ErrorKind::NotFound,
                   which.who.empty() ? "No cover is planned for today or later."
                                     : "No cover of that person is planned for today or later.");
  const Outlook outlook = forecaster.ahead(days_until(now, cover->last_day()));
  const KnownNow known{whole->collection, whole->rules, whole->climate, whole->cover, outlook};
  CoverPlan plan = plan_cover(known, *cover);
  return CoverReading{*std::move(whole), std::move(plan)};
}

}  // namespace rackside
