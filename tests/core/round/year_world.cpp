#include "tests/core/round/year_world.hpp"

#include <algorithm>
#include <cmath>

#include "tests/generators/events.hpp"

namespace rackside::tests {
namespace {

using std::chrono::days;

const Day start{std::chrono::year{2031} / 1 / 1};
constexpr int week = 7;

}  // namespace

YearWorld::YearWorld(int animals, unsigned seed) : random_(seed), today_(start) {
  for (int i = 0; i < animals; ++i) {
    Life life{.id = animal_number(i)};
    life.instar = 3 + i % 7;
    life.pace = spread(0.25);
    life.shows_patch = i % 3 != 0;
    begin_cycle(life, start - days{std::uniform_int_distribution(0, 20)(random_)});
    lives_[life.id] = life;
    Event added =
        make_event(i, 0, life.id,
                   AnimalAdded{.key = "y-" + std::to_string(i),
                               .species = i % 2 ? "Novogenus inventus" : "Novogenus alter",
                               .stage = life.instar <= 5 ? Stage::Sling : Stage::Juvenile,
                               .instar = life.instar});
    added.enclosure = tub_number(i);
    log_.push_back(added);
    logs_[life.id].push_back(added);
    apply(collection_, added);
  }
}

Moment YearWorld::morning(Day day) const {
  return Moment{Instant{day} + std::chrono::hours{8}, std::chrono::minutes{60}};
}

void YearWorld::begin_cycle(Life& life, Day from) {
  const double length = life.pace * 40 * std::pow(1.25, life.instar - 3) * spread(0.14);
  life.moulted = from;
  life.moult = from + days{std::lround(length)};
  life.premoult = life.moult - days{std::lround(std::min(60.0, length * 0.27 * spread(0.3)))};
  life.fast_from = life.fast_to = from;
  if (chance(0.25)) {
    life.fast_from = from + days{std::lround(length * 0.3)};
    life.fast_to = life.fast_from + days{std::lround(12 * spread(0.5))};
  }
}

bool YearWorld::in_danger(const Life& life, Day day) const {
  return (life.moult - day) <= days{week} || (day - life.moulted) < days{week};
}

void YearWorld::live(int number_of_days, const Keeper& keeper, YearCount& count) {
  count_ = &count;
  for (int i = 0; i < number_of_days; ++i, today_ += days{1}) {
    minute_ = 0;
    opened_.clear();
    for (auto& [id, life] : lives_) {
      if (today_ > life.moult) {
        ++life.instar;
        life.shed_lies = true;
        begin_cycle(life, life.moult);
      }
      if (in_danger(life, today_)) count.danger_days += 1;
    }
    keeper(*this, today_);
    count.visits += static_cast<int>(opened_.size());
  }
}

void YearWorld::record(const AnimalId& id, Day day, Details details) {
  Event event = make_event(static_cast<std::int64_t>(log_.size()), 0, id, std::move(details));
  event.when.moment = morning(day);
  event.when.moment.utc += std::chrono::minutes{++minute_};
  event.written = event.when.moment.utc;
  log_.push_back(event);
  logs_[id].push_back(event);
  apply(collection_, event);
  opened_.insert(id);
}

bool YearWorld::sees_shed_or_moult(const AnimalId& id, Day day) {
  Life& life = lives_.at(id);
  opened_.insert(id);
  if (day == life.moult && chance(0.5)) {
    record(id, day, Looked{{Sign::OnItsBack}});
    return true;
  }
  if (!life.shed_lies || !chance(0.9)) return false;
  life.shed_lies = false;
  record(id, day, ShedFound{});
  return true;
}

void YearWorld::look(const AnimalId& id, Day day) {
  if (sees_shed_or_moult(id, day)) return;
  const Life& life = lives_.at(id);
  const bool premoult = day >= life.premoult;
  SignSet signs;
  if (premoult && life.shows_patch && life.moult - day < days{21} && chance(0.7))
    signs.insert(Sign::DarkAbdomen);
  if (premoult && chance(0.3)) signs.insert(Sign::PlumpAbdomen);
  if (chance(premoult ? 0.25 : 0.01)) signs.insert(Sign::Sluggish);
  record(id, day, Looked{signs});
}

void YearWorld::offer(const AnimalId& id, Day day) {
  Life& life = lives_.at(id);
  const bool danger = in_danger(life, day);
  const bool soft = day - life.moulted < days{6};
  const bool fasts = day >= life.premoult || (day >= life.fast_from && day < life.fast_to);
  const bool sated = life.last_meal && day - *life.last_meal < days{3};
  const bool takes = chance(soft ? 0.05 : fasts ? 0.12 : sated ? 0.6 : 0.92);
  if (danger) ++count_->in_danger;
  if (day == life.moult) ++count_->on_its_back;
  if (!danger) ++(takes ? count_->taken : count_->refused);
  if (takes) life.last_meal = day;
  const Outcome outcome = takes         ? Outcome::Took
                          : chance(0.2) ? Outcome::LeftOvernight
                                        : Outcome::Refused;
  record(id, day, Offered{outcome, "cricket", 1});
}

namespace {

void feed_by_calendar(YearWorld& world, Day day, bool stop_after_two) {
  std::vector<AnimalId> ids;
  for (const auto& [id, animal] : world.collection().animals) ids.push_back(id);
  for (const AnimalId& id : ids) {
    const AnimalState& animal = *world.collection().animal(id);
    const auto since = [&](const When& when) { return day - when.moment.day(); };
    if (animal.prey_in_tub) world.record(id, day, PreyRemoved{});
    if (animal.last_moult && since(animal.last_moult->noticed) < days{week}) continue;
    const int every = stop_after_two && animal.refusals_since_meal >= 2
                          ? 3 * week
                          : days_between_meals(animal, default_rules(), day);
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
