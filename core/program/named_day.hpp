#pragma once
// A day that a person names, as the moments that bound it on the clock of this place.

#include <string>

#include "core/clock/clock.hpp"

namespace rackside::program {

struct NamedDay {
  Day day;
  Moment noon;   // what is told "after the day" counts from here, as records of a day only do
  Instant ends;  // the last instant that belongs to it
};

/// Errors: BadInput.
[[nodiscard]] Result<NamedDay> named_day(const std::string& text, Clock& clock);
[[nodiscard]] NamedDay named_day(Day day, Clock& clock);

}  // namespace rackside::program
