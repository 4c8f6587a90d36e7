#include "core/round/round.hpp"

#include <algorithm>
#include <cmath>

namespace rackside {
namespace {

constexpr int tubs_for_a_pace = 3;

template <class... Kinds>
bool is_any(const Details& event) {
  return (std::holds_alternative<Kinds>(event) || ...);
}

bool saw_something(const Details& event) {
  const auto* looked = std::get_if<Looked>(&event);
  return (looked && !looked->signs.empty()) || is_any<Moulted, ShedFound, Died, Left>(event);
}

bool took(const Details& event) {
  const auto* offered = std::get_if<Offered>(&event);
  return offered && offered->outcome == Outcome::Took;
}

TubProgress progress_of(const TubTask& tub, const std::vector<const Event*>& events) {
  const auto answered = [&](Task task) {
    return std::ranges::any_of(events, [&](auto* event) { return answers(event->details, task); });
  };
  TubProgress progress{.animal = tub.animal, .done = answered(tub.instruction.task)};
  for (const Task task : tub.instruction.also)
    if (!answered(task)) progress.still_open.push_back(task);
  return progress;
}

std::optional<std::chrono::minutes> at_this_pace(int done, int due, When started, Instant last) {
  if (done < tubs_for_a_pace || last <= started.moment.utc) return std::nullopt;
  const double minutes = days_between(started.moment.utc, last) * 24 * 60;
  return std::chrono::minutes{static_cast<std::int64_t>(std::ceil(minutes / done * (due - done)))};
}

}  // namespace

std::optional<Round> last_round(std::vector<Event> events, KioskId kiosk) {
  std::optional<Round> round;
  for (const Event& event : standing(std::move(events))) {
    if (event.kiosk != kiosk) continue;
    if (const auto* started = std::get_if<RoundStarted>(&event.details))
      round = Round{event.id, kiosk, event.when, event.written, started->rack, std::nullopt};
    const auto* ended = std::get_if<RoundEnded>(&event.details);
    if (ended && round && ended->round == round->id) round->ended = event.when;
  }
  return round;
}

RoundLog split_at(const Round& round, std::vector<Event> events) {
  RoundLog log;
  for (Event& event : events) {
    if (is_any<RoundStarted, RoundEnded>(event.details)) continue;
    // Within the same millisecond the order of ids decides.
    const bool earlier = std::pair(event.written, event.id) < std::pair(round.written, round.id);
    (earlier ? log.before : log.since).push_back(std::move(event));
  }
  return log;
}

bool answers(const Details& event, Task task) {
  switch (task) {
    case Task::Offer:
    case Task::OfferOneSmall: return is_any<Offered>(event) || saw_something(event);
    case Task::TakeOutPrey:
    case Task::TakePreyFromMoult: return is_any<PreyRemoved>(event) || took(event);
    case Task::TakeOutShed: return is_any<ShedRemoved>(event);
    case Task::MeasureFromShed: return is_any<Measured, Sexed>(event);
    case Task::MistAndCheckWater: return is_any<Misted, WaterFilled>(event);
    case Task::GiveWater: return is_any<WaterFilled, Misted>(event);
    case Task::LookForShed:
    case Task::LookCloser:
    case Task::RefusesAfterMoult:
    case Task::HelpWithMoult: return is_any<Looked, Offered>(event) || saw_something(event);
    case Task::Reoffer:
    case Task::NotDue:
    case Task::Withhold:
    case Task::LeaveAlone: return true;
  }
  return false;
}

Progress progress(const DayPlan& plan, std::vector<Event> since, When started) {
  since = standing(std::move(since));
  std::map<AnimalId, std::vector<const Event*>> by_animal;
  Instant last{};
  for (const Event& event : since) {
    if (!event.animal) continue;
    by_animal[*event.animal].push_back(&event);
    last = std::max(last, event.written);
  }
  Progress result;
  for (const TubTask& tub : plan.due) {
    result.tubs.push_back(progress_of(tub, by_animal[tub.animal]));
    if (result.tubs.back().done) ++result.done;
  }
  result.remaining = at_this_pace(result.done, result.due(), started, last);
  return result;
}

std::vector<AnimalId> Progress::left() const {
  std::vector<AnimalId> animals;
  for (const TubProgress& tub : tubs)
    if (!tub.done) animals.push_back(tub.animal);
  return animals;
}

}  // namespace rackside
