#include "core/event/event.hpp"

#include <algorithm>

namespace rackside {

bool happened_before(const Event& a, const Event& b) {
  if (a.when.moment.utc != b.when.moment.utc) return a.when.moment.utc < b.when.moment.utc;
  return a.id < b.id;
}

// Latest id first: whether a retraction stands is settled before the events it can target.
std::unordered_set<EventId> taken_back(const std::vector<Event>& events) {
  std::vector<const Event*> retractions;
  for (const Event& event : events)
    if (std::holds_alternative<Retracted>(event.details)) retractions.push_back(&event);
  std::ranges::sort(retractions, [](auto* a, auto* b) { return a->id > b->id; });
  std::unordered_set<EventId> targets;
  for (const Event* event : retractions) {
    if (targets.contains(event->id)) continue;
    const EventId target = std::get<Retracted>(event->details).target;
    if (target < event->id) targets.insert(target);
  }
  return targets;
}

std::vector<Event> standing(std::vector<Event> events) {
  const auto gone = taken_back(events);
  std::erase_if(events, [&](const Event& event) {
    return std::holds_alternative<Retracted>(event.details) || gone.contains(event.id);
  });
  std::ranges::sort(events, happened_before);
  const auto twice = std::ranges::unique(events, {}, &Event::id);
  events.erase(twice.begin(), twice.end());
  return events;
}

}  // namespace rackside
