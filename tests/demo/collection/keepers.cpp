#include "tests/demo/collection/keepers.hpp"

#include "core/care/meals.hpp"

namespace rackside::tests {
namespace {

using std::chrono::days;

constexpr days week{7};

void feed_by_calendar(YearWorld& world, Day day, bool stop_after_two) {
  for (const auto& [id, life] : world.truth()) {
    const AnimalState& animal = *world.collection().animal(id);
    const auto since = [&](const When& when) { return day - when.moment.day(); };
    if (animal.prey_in_tub) world.record(id, day, PreyRemoved{});
    if (animal.last_moult && since(animal.last_moult->noticed) < week) continue;
    const auto every = stop_after_two && animal.refusals_since_meal >= 2
                           ? 3 * week.count()
                           : std::int64_t{days_between_meals(animal, default_rules(), day)};
    const bool moulted_since =
        animal.last_moult && animal.last_offer &&
        animal.last_moult->noticed.moment.utc > animal.last_offer->when.moment.utc;
    if (animal.last_offer && !moulted_since && since(animal.last_offer->when) < days{every})
      continue;
    if (!world.sees_shed_or_moult(id, day)) world.offer(id, day);
  }
}

void carry_out(YearWorld& world, const AnimalId& id, Task task, Day day) {
  switch (task) {
    case Task::Offer:
    case Task::OfferOneSmall:
      if (!world.sees_shed_or_moult(id, day)) world.offer(id, day);
      return;
    case Task::TakeOutPrey:
    case Task::TakePreyFromMoult: world.record(id, day, PreyRemoved{}); return;
    case Task::TakeOutShed: world.record(id, day, ShedRemoved{}); return;
    case Task::MeasureFromShed: world.record(id, day, Sexed{Sex::Female}); return;
    case Task::GiveWater:
    case Task::MistAndCheckWater: world.record(id, day, Misted{}); return;
    case Task::LookForShed:
    case Task::LookCloser:
    case Task::HelpWithMoult:
    case Task::RefusesAfterMoult: world.look(id, day); return;
    case Task::Reoffer:
    case Task::NotDue:
    case Task::Withhold:
    case Task::LeaveAlone: return;
  }
}

}  // namespace

void calendar_keeper(YearWorld& world, Day day) { feed_by_calendar(world, day, false); }
void two_refusals_keeper(YearWorld& world, Day day) { feed_by_calendar(world, day, true); }

YearWorld::Keeper plan_keeper(Forecaster forecaster, RuleBook rules) {
  return [forecaster = std::move(forecaster), rules = std::move(rules)](YearWorld& world, Day day) {
    const auto forecasts = forecaster(world, world.morning(day).utc);
    const auto plan = plan_day(world.collection(), forecasts, rules, {}, world.morning(day));
    for (const TubTask& tub : plan.due) {
      carry_out(world, tub.animal, tub.instruction.task, day);
      for (const Task task : tub.instruction.also) carry_out(world, tub.animal, task, day);
    }
  };
}

}  // namespace rackside::tests
