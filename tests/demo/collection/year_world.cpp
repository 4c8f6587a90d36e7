#include "tests/demo/collection/year_world.hpp"

#include <sstream>

#include "core/interchange/import.hpp"
#include "tests/fakes/fixed_clock.hpp"
#include "tests/fakes/memory_log_store.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

namespace rackside::tests {
namespace {

using std::chrono::days;

const Day start{std::chrono::year{2031} / 1 / 1};
constexpr days week{7};
// Numbers of the events written in the year, beyond those of the import.
constexpr std::int64_t first_number = 1'000'000;

bool in_danger(const demo::Life& life, Day day) {
  return life.next_moult() - day <= week || day - life.moulted() < week;
}

std::vector<Event> imported(const std::vector<demo::Animal>& animals) {
  std::ostringstream first, second;
  demo::write_animals(first, animals);
  demo::write_events(second, animals);
  const std::string animals_text = first.str();
  const std::string events_text = second.str();
  MemoryLogStore log{kiosk_number(1)};
  FixedClock clock{{Instant{start}, std::chrono::minutes{60}}};
  CountingIds ids{1};
  const auto plan = plan_import(SourceFile{"animals.csv", animals_text},
                                SourceFile{"events.csv", events_text}, log, clock, ids);
  if (!plan) FAIL(plan.error().where + ": " + plan.error().sentence);
  return log.append(plan->drafts, clock.now().utc).value();
}

}  // namespace

YearCount& YearCount::operator+=(const YearCount& other) {
  in_danger += other.in_danger;
  on_its_back += other.on_its_back;
  taken += other.taken;
  refused += other.refused;
  visits += other.visits;
  danger_days += other.danger_days;
  return *this;
}

YearWorld::YearWorld(int tubs, unsigned seed) : dice_(seed), today_(start) {
  import(demo::invent_collection(tubs, start - days{1}, dice_));
}

void YearWorld::import(const std::vector<demo::Animal>& animals) {
  for (const Event& event : imported(animals)) {
    (event.animal ? logs_[*event.animal] : room_).push_back(event);
    apply(collection_, event);
  }
  for (const demo::Animal& animal : animals)
    if (!animal.ended) lives_.emplace(collection_.animal_by_key(animal.key)->id, animal.life);
}

std::vector<Event> YearWorld::log() const {
  std::vector<Event> all = room_;
  for (const auto& [id, events] : logs_) all.insert(all.end(), events.begin(), events.end());
  return all;
}

Moment YearWorld::morning(Day day) const {
  return Moment{Instant{day} + std::chrono::hours{8}, std::chrono::minutes{60}};
}

YearCount YearWorld::live(int number_of_days, const Keeper& keeper) {
  count_ = {};
  for (int i = 0; i < number_of_days; ++i, today_ += days{1}) {
    minute_ = 0;
    opened_.clear();
    for (auto& [id, life] : lives_) {
      life.live_on(today_, dice_);
      if (in_danger(life, today_)) count_.danger_days += 1;
    }
    keeper(*this, today_);
    count_.visits += static_cast<int>(opened_.size());
  }
  return count_;
}

void YearWorld::record(const AnimalId& id, Day day, Details details) {
  Event event = make_event(first_number + ++written_, 0, id, std::move(details));
  event.when.moment = morning(day);
  event.when.moment.utc += std::chrono::minutes{++minute_};
  event.written = event.when.moment.utc;
  logs_[id].push_back(event);
  apply(collection_, event);
  opened_.insert(id);
}

bool YearWorld::sees_shed_or_moult(const AnimalId& id, Day day) {
  demo::Life& life = lives_.at(id);
  opened_.insert(id);
  if (day == life.moulted() && dice_.chance(0.5)) {
    record(id, day, Looked{{Sign::OnItsBack}});
    return true;
  }
  if (day == life.moulted() || !life.shed_lies() || !dice_.chance(0.93)) return false;
  life.shed_is_found();
  record(id, day, ShedFound{});
  return true;
}

void YearWorld::look(const AnimalId& id, Day day) {
  if (!sees_shed_or_moult(id, day)) record(id, day, Looked{lives_.at(id).shows(day, dice_)});
}

void YearWorld::offer(const AnimalId& id, Day day) {
  const demo::Life& life = lives_.at(id);
  const auto meal = last_meals_.find(id);
  // Who ate the day before yesterday is not always hungry, whatever the plan thinks.
  const bool sated = meal != last_meals_.end() && day - meal->second < days{3};
  const bool takes = life.takes(day, dice_) && !(sated && dice_.chance(0.35));
  if (day == life.moulted()) ++count_.on_its_back;
  if (in_danger(life, day))
    ++count_.in_danger;
  else
    ++(takes ? count_.taken : count_.refused);
  if (takes) last_meals_[id] = day;
  const Outcome outcome = takes               ? Outcome::Took
                          : dice_.chance(0.2) ? Outcome::LeftOvernight
                                              : Outcome::Refused;
  record(id, day, Offered{outcome, "cricket", 1});
}

}  // namespace rackside::tests
