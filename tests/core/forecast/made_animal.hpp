#pragma once
// Animals made by hand, on which one fact at a time can be seen.

#include <cmath>

#include "core/forecast/collection_model.hpp"
#include "core/forecast/forecast.hpp"
#include "tests/core/forecast/invented_collection.hpp"
#include "tests/generators/events.hpp"

namespace rackside::tests {

inline constexpr double now = 23'000.5;

/// Has moulted every 130 days, the last time so many days ago.
inline Evidence juvenile(double last_moult_days_ago) {
  Evidence animal{.key = "x", .species = "Haplocosmia himalayana", .stage = Stage::Juvenile};
  animal.arrived = now - 800;
  for (double age = last_moult_days_ago + 390; age >= last_moult_days_ago; age -= 130)
    animal.moults.push_back({now - age - 0.5, now - age + 0.5, event_number(std::lround(age))});
  return animal;
}

inline void offer(Evidence& animal, double day, Outcome outcome) {
  animal.observations.push_back(
      {.day = day, .event = event_number(std::lround(day * 10)), .outcome = outcome});
  animal.visits.push_back(day);
}

inline void look(Evidence& animal, double day, SignSet signs) {
  animal.observations.push_back({.day = day,
                                 .event = event_number(std::lround(day * 10) + 1),
                                 .kind = Observation::Kind::Look,
                                 .signs = signs});
  animal.visits.push_back(day);
}

inline double premoult(const Evidence& animal) {
  return forecast(untaught_model(), animal, moment_of(now)).p_premoult;
}

}  // namespace rackside::tests
