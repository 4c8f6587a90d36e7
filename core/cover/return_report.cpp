#include "core/cover/return_report.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "core/collection/place.hpp"
#include "core/round/round.hpp"
#include "core/words/dates.hpp"

namespace rackside {
namespace {

using What = std::pair<std::string, std::optional<Millimetres>>;

std::vector<Task> tasks_of(const Instruction& said) {
  std::vector<Task> tasks;
  if (said.urgency != Urgency::Due) return tasks;
  tasks.push_back(said.task);
  tasks.insert(tasks.end(), said.also.begin(), said.also.end());
  std::erase(tasks, Task::MeasureFromShed);  // the keeper's own
  return tasks;
}

bool no_food(const Instruction& said) {
  return !said.prey && said.task != Task::NotDue && said.task != Task::Reoffer &&
         said.task != Task::MistAndCheckWater && said.task != Task::TakeOutPrey &&
         said.task != Task::TakeOutShed && said.task != Task::MeasureFromShed;
}

// One animal followed from morning to morning.
class Follow {
 public:
  Follow(TubReturn& tub, const TubPast& past) : tub_(tub), past_(past) {}

  void day(const Moment& morning, const Forecast* forecast) {
    catch_up(morning.day());
    const auto begin = next_;
    const std::size_t end = end_of(morning.day());
    const std::span<const Event> events(past_.events.data() + begin, end - begin);
    if (added_ && animal_.life == Life::Living)
      settle(instruct(animal_, forecast, past_.rules, &past_.air, morning), events, morning.day());
    for (const Event& event : events) note(event);
  }
  void finish() {
    tub_.duties.insert(tub_.duties.end(), open_.begin(), open_.end());
    std::ranges::stable_sort(tub_.duties, {}, &DutyRecord::due);
  }

 private:
  void catch_up(Day day) {
    for (; next_ < past_.events.size() && past_.events[next_].when.moment.day() < day; ++next_) {
      added_ = added_ || std::holds_alternative<AnimalAdded>(past_.events[next_].details);
      apply(animal_, past_.events[next_]);
    }
  }
  [[nodiscard]] std::size_t end_of(Day day) const {
    std::size_t end = next_;
    while (end < past_.events.size() && past_.events[end].when.moment.day() == day) ++end;
    return end;
  }

  void settle(const Instruction& said, std::span<const Event> events, Day day) {
    const std::vector<Task> tasks = tasks_of(said);
    for (DutyRecord& duty : open_)
      if (std::ranges::find(tasks, duty.task) == tasks.end()) close(duty, Fate::FellAway, day);
    for (const Task task : tasks)
      if (std::ranges::none_of(open_, [&](const auto& duty) { return duty.task == task; }))
        open_.push_back({task, day, Fate::NotDone, day});
    for (DutyRecord& duty : open_)
      if (std::ranges::any_of(
              events, [&](const Event& event) { return answers(event.details, duty.task); }))
        close(duty, Fate::Done, day);
    std::erase_if(open_, [](const DutyRecord& duty) { return duty.fate != Fate::NotDone; });
    const bool offered = std::ranges::any_of(
        events, [](const Event& event) { return std::holds_alternative<Offered>(event.details); });
    if (offered && no_food(said)) tub_.fed_against.push_back(day);
  }
  void close(DutyRecord& duty, Fate fate, Day day) {
    if (duty.fate != Fate::NotDone) return;
    duty.fate = fate;
    duty.settled = day;
    tub_.duties.push_back(duty);
  }

  void note(const Event& event) {
    const Day day = event.when.moment.day();
    if (const auto* offered = std::get_if<Offered>(&event.details)) note_offer(*offered);
    if (const auto* flagged = std::get_if<Flagged>(&event.details))
      tub_.flags.push_back({day, event.note, flagged->picture});
    if (std::holds_alternative<Moulted>(event.details) ||
        std::holds_alternative<ShedFound>(event.details))
      tub_.moulted = day;
    if (std::holds_alternative<Died>(event.details)) tub_.died = day;
  }
  void note_offer(const Offered& offered) {
    if (offered.outcome != Outcome::Took) {
      ++tub_.refused;
      return;
    }
    ++tub_.took;
    const std::string kind = offered.prey.empty() ? "prey" : offered.prey;
    tub_.eaten.push_back({kind, offered.size, offered.count.value_or(1)});
  }

  TubReturn& tub_;
  const TubPast& past_;
  AnimalState animal_;
  bool added_ = false;
  std::size_t next_ = 0;
  std::vector<DutyRecord> open_;
};

std::string moult_words(const Forecast& forecast, Day made, DateStyle dates) {
  if (!forecast.moult_expected) return "no moult is expected";
  constexpr std::size_t quarter = 4;  // of the quantiles 0.05, 0.10, ...
  constexpr std::size_t three_quarters = 14;
  const auto day_of = [&](std::size_t quantile) {
    return made + std::chrono::days{static_cast<int>(std::lround(forecast.next_moult[quantile]))};
  };
  const std::chrono::year_month_day last{day_of(three_quarters)};
  const bool this_year = last.year() == std::chrono::year_month_day{made}.year();
  return fmt::format("next moult most likely between {}{}",
                     two_days_words(day_of(quarter), day_of(three_quarters), dates),
                     this_year ? "" : fmt::format(" {}", static_cast<int>(last.year())));
}

std::vector<PreyUsed> sum_of(const std::vector<TubReturn>& tubs) {
  std::map<What, int> counts;
  for (const TubReturn& tub : tubs)
    for (const PreyUsed& eaten : tub.eaten) counts[{eaten.kind, eaten.size}] += eaten.count;
  std::vector<PreyUsed> prey;
  for (const auto& [what, count] : counts) prey.push_back({what.first, what.second, count});
  return prey;
}

}  // namespace

int TubReturn::count(Fate fate) const {
  return static_cast<int>(std::ranges::count(duties, fate, &DutyRecord::fate));
}

int ReturnReport::count(Fate fate) const {
  int sum = 0;
  for (const TubReturn& tub : tubs) sum += tub.count(fate);
  return sum;
}

int ReturnReport::late() const {
  int sum = 0;
  for (const TubReturn& tub : tubs)
    for (const DutyRecord& duty : tub.duties)
      if (duty.fate == Fate::Done && duty.days_late() > 0) ++sum;
  return sum;
}

std::optional<TubReturn> follow_tub(const TubPast& past, std::span<const Moment> days,
                                    const Moment& now) {
  const auto animal = fold_animal(past.events);
  if (!animal || days.empty()) return std::nullopt;
  if (animal->ended && animal->ended->moment.day() < days.front().day()) return std::nullopt;
  TubReturn tub{.animal = animal->id, .enclosure = animal->enclosure};
  tub.name = display_name(*animal);
  Follow follow(tub, past);
  for (std::size_t i = 0; i < days.size(); ++i)
    follow.day(days[i], i < past.forecasts.size() ? &past.forecasts[i] : nullptr);
  follow.finish();
  const DateStyle dates = past.rules.wording.dates;
  if (!past.forecasts.empty()) tub.then = moult_words(past.forecasts[0], days.front().day(), dates);
  if (past.now && animal->life == Life::Living) tub.now = moult_words(*past.now, now.day(), dates);
  return tub;
}

ReturnReport report_return(const Cover& cover, std::vector<TubReturn> tubs,
                           std::span<const Moment> days, const std::vector<Day>& recorded) {
  ReturnReport report{.cover = cover, .last = days.empty() ? cover.from : days.back().day()};
  for (const Moment& day : days)
    if (std::ranges::find(recorded, day.day()) == recorded.end())
      report.silent_days.push_back(day.day());
  std::ranges::sort(tubs, [](const TubReturn& a, const TubReturn& b) {
    if (walks_before(a.place, b.place)) return true;
    if (walks_before(b.place, a.place)) return false;
    return a.animal < b.animal;
  });
  report.prey = sum_of(tubs);
  report.tubs = std::move(tubs);
  return report;
}

}  // namespace rackside
