#pragma once
// One entry of the log. Events are never changed and never deleted.

#include <cstdint>
#include <optional>
#include <string>
#include <unordered_set>
#include <vector>

#include "core/code/code.hpp"
#include "core/event/details.hpp"
#include "core/values/time.hpp"
#include "core/values/uuid.hpp"

namespace rackside {

/// What is to be written: everything a person or a file can say about an event.
struct Draft {
  EventId id;
  std::string by;  // who saw or did it; empty when nobody said
  When when;
  std::optional<AnimalId> animal;  // whom it is about
  std::optional<Code> enclosure;   // where: the tub the animal was in, or the tub it is about
  Details details;
  std::string note;

  bool operator==(const Draft&) const = default;
};

/// A draft with what the log adds when it writes it.
struct Event : Draft {
  KioskId kiosk;            // the kiosk that made it ...
  std::int64_t number = 0;  // ... and its running number there, from 1 without gaps
  Instant written{};

  bool operator==(const Event&) const = default;
};

/// The order in which events are told: when they happened, then their ids.
[[nodiscard]] bool happened_before(const Event& a, const Event& b);

/// The targets of all retractions among `events` that were not themselves taken back.
[[nodiscard]] std::unordered_set<EventId> taken_back(const std::vector<Event>& events);

/// The events that nobody took back, in the order in which they happened. Retractions themselves
/// are not among them. Takes events in any order and gives the same answer for every order;
/// an id that comes twice counts once.
[[nodiscard]] std::vector<Event> standing(std::vector<Event> events);

}  // namespace rackside
