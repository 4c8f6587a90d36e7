#pragma once
// Random events for property tests: any kind, few animals and tubs so that they meet, a clock that
// repeats itself, retractions of anything.

#include <vector>

#include "core/event/event.hpp"
#include "tests/frame.hpp"

namespace rackside::tests {

[[nodiscard]] AnimalId animal_number(int number);
[[nodiscard]] KioskId kiosk_number(int number);
/// Ids that sort by `order`.
[[nodiscard]] EventId event_number(std::int64_t order);
[[nodiscard]] Code tub_number(int number);
/// 2031-01-01T00:00Z and so many hours, at an offset of one hour.
[[nodiscard]] When at_hour(double hours);

/// A plain event about `animal`, made by kiosk 1 as its number `order`.
[[nodiscard]] Event make_event(std::int64_t order, double hour, AnimalId animal, Details details);

[[nodiscard]] rc::Gen<Details> any_details(std::int64_t order);
/// A log of two kiosks, up to `most` events, in the order of their ids.
[[nodiscard]] rc::Gen<std::vector<Event>> any_log(int most = 60);

}  // namespace rackside::tests
