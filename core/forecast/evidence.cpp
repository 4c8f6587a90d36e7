#include "core/forecast/evidence.hpp"

#include <algorithm>

#include "core/forecast/event_reader.hpp"

namespace rackside {

double wall_day(const Moment& moment) {
  return std::chrono::duration<double, std::chrono::days::period>(moment.local().time_since_epoch())
      .count();
}

std::optional<Evidence> gather_evidence(std::vector<Event> events, Instant as_of,
                                        const Surroundings& surroundings) {
  std::erase_if(events, [&](const Event& event) { return event.when.moment.utc > as_of; });
  const std::vector<Event> told = standing(std::move(events));
  const auto adds = [](const Event& event) {
    return event.animal && std::holds_alternative<AnimalAdded>(event.details);
  };
  // The last word on who it is, as core/collection has it.
  const auto added = std::find_if(told.rbegin(), told.rend(), adds);
  if (added == told.rend()) return std::nullopt;
  return read_events(*added, told, surroundings);
}

std::optional<Evidence> as_it_stood(const Evidence& evidence, double day) {
  if (evidence.arrived > day) return std::nullopt;
  Evidence then = evidence;
  const auto after = [day](double when) { return when > day; };
  std::erase_if(then.observations, [&](const auto& o) { return after(o.day); });
  std::erase_if(then.moults, [&](const auto& m) { return after(m.latest - 0.5); });
  std::erase_if(then.visits, after);
  std::erase_if(then.warmth, [&](const auto& w) { return after(w.day); });
  if (then.matured && after(*then.matured)) then.matured.reset();
  if (then.ended && after(*then.ended)) then.ended.reset();
  return then;
}

}  // namespace rackside
