// What is read and printed about somebody who stands in.

#include "core/cover/supplies.hpp"
#include "core/overview/return_reading.hpp"
#include "kiosk/shell/effect_runner.hpp"

namespace rackside::kiosk {

HowFar EffectRunner::how_far_with(const EventId& cover) {
  return [this, cover](double part) { needs_.results.post(CoverWorked{cover, part}); };
}

void EffectRunner::foresee_cover(const ForeseeCover& effect) {
  const auto brief = [](const CoverReading& reading) {
    const CoverPlan& plan = reading.plan;
    return CoverBrief{
        supplies_for(plan.days, reading.overview.collection, plan.margin, plan.wording),
        plan.moults};
  };
  const auto read = read_cover_plan(*needs_.reading_log, {{}, effect.cover}, needs_.clock.now(),
                                    effect.wording, how_far_with(effect.cover));
  needs_.results.post(CoverForeseen{effect.cover, read.map(brief)});
}

void EffectRunner::tell_return(const TellReturn& effect) {
  auto read = read_return(*needs_.reading_log, {{}, effect.cover}, needs_.clock.now(),
                          effect.wording, how_far_with(effect.cover));
  const auto report = [](ReturnReading&& reading) { return std::move(reading.report); };
  needs_.results.post(ReturnTold{effect.cover, std::move(read).map(report)});
}

// Read anew, not as the screen has it: a sheet for the wall is a line for every tub and day.
void EffectRunner::print_handover(const PrintHandover& effect) {
  auto read = read_cover_plan(*needs_.reading_log, {{}, effect.cover}, needs_.clock.now(),
                              effect.settings.wording);
  if (!read) {
    needs_.results.post(SheetPrinted{tl::unexpected(std::move(read.error()))});
    return;
  }
  // A job is copied; the plan is large.
  printing_.add([this, effect, reading = std::make_shared<const CoverReading>(*std::move(read))] {
    needs_.results.post(SheetPrinted{needs_.print_handover(*reading, effect.settings)});
  });
}

}  // namespace rackside::kiosk
