#pragma once
// A small invented rack room for the tests of the round: tubs with a place and a juvenile each.

#include "core/round/round.hpp"
#include "core/round/summary.hpp"
#include "tests/generators/events.hpp"

namespace rackside::tests {

struct RackRoom {
  std::vector<Event> log;
  std::map<AnimalId, Forecast> forecasts;
  RuleBook rules;
  RoomClimate climate;

  static constexpr double now_hour = 24.0 * 100 + 11;  // noon at an offset of one hour
  [[nodiscard]] static When days_ago(double days) { return at_hour(now_hour - 24.0 * days); }
  [[nodiscard]] static Moment now() { return at_hour(now_hour).moment; }

  Event& add(double days_ago, std::optional<int> animal, Details details) {
    const auto order = static_cast<std::int64_t>(log.size());
    log.push_back(make_event(order, now_hour - 24.0 * days_ago, animal_number(animal.value_or(0)),
                             std::move(details)));
    if (!animal) log.back().animal.reset();
    return log.back();
  }
  /// A tub at `place` with animal `number` in it, kept since long ago.
  RackRoom& tub(int number, Place place,
                AnimalAdded animal = {.species = "Novogenus invented", .stage = Stage::Juvenile}) {
    add(90, std::nullopt, EnclosureAdded{std::move(place)}).enclosure = tub_number(number);
    add(90, number, std::move(animal)).enclosure = tub_number(number);
    return *this;
  }
  RackRoom& happened(double days_ago, int number, Details details) {
    add(days_ago, number, std::move(details));
    return *this;
  }
  RackRoom& believed(int number, double p_premoult) {
    forecasts[animal_number(number)] =
        Forecast{.animal = animal_number(number), .as_of = now().utc, .p_premoult = p_premoult};
    return *this;
  }
  [[nodiscard]] Collection collection() const { return fold_collection(log); }
  [[nodiscard]] DayPlan plan(std::string_view rack = {}) const {
    return plan_day(collection(), forecasts, rules, climate, now(), rack);
  }
};

inline std::vector<AnimalId> animals_of(const std::vector<TubTask>& tubs) {
  std::vector<AnimalId> ids;
  for (const TubTask& tub : tubs) ids.push_back(tub.animal);
  return ids;
}

inline std::vector<AnimalId> numbered(std::initializer_list<int> numbers) {
  std::vector<AnimalId> ids;
  for (const int number : numbers) ids.push_back(animal_number(number));
  return ids;
}

}  // namespace rackside::tests
