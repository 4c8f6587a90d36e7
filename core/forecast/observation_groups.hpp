#pragma once
// Observations that belong together for a reader: meals refused in a row, looks that saw the same.

#include <span>
#include <string>
#include <vector>

#include "core/forecast/habits.hpp"

namespace rackside {

struct ObservationGroup {
  std::string text;  // in plain words, with {0}, {1} where one of `days` belongs
  std::vector<EventId> events;
  std::vector<Day> days;
};

/// Of the cycle that runs. `habits` are those of the animal: they say what is usual for it. Signs
/// that say nothing of the moult are not spoken of.
[[nodiscard]] std::vector<ObservationGroup> group_observations(
    std::span<const Observation> observations, const Habits& habits, SignSet mute);

}  // namespace rackside
