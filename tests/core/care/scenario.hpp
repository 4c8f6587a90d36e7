#pragma once
// An invented animal and what happened to it, told in days before now. Now is noon.

#include <algorithm>

#include "core/care/instruction.hpp"
#include "tests/generators/events.hpp"

namespace rackside::tests {

struct Scenario {
  AnimalAdded added{.key = "ov-1", .species = "Novogenus invented", .stage = Stage::Juvenile};
  std::vector<Event> events;
  CareRules rules = default_rules();
  std::optional<Forecast> forecast;
  RackClimate air;

  static constexpr double now_hour = 24.0 * 400 + 11;  // noon at an offset of one hour

  [[nodiscard]] static When days_ago(double days) { return at_hour(now_hour - 24.0 * days); }
  [[nodiscard]] static Moment now() { return at_hour(now_hour).moment; }
  [[nodiscard]] static Day today() { return now().day(); }

  Scenario& stage(Stage value) {
    added.stage = value;
    return *this;
  }
  Scenario& ago(double days, Details details) {
    events.push_back(make_event(static_cast<std::int64_t>(events.size()) + 1,
                                now_hour - 24.0 * days, animal_number(1), std::move(details)));
    return *this;
  }
  Scenario& meal(double days) { return ago(days, Offered{Outcome::Took, "cricket"}); }
  Scenario& refusal(double days) { return ago(days, Offered{Outcome::Refused, "cricket"}); }
  Scenario& looked(double days, SignSet signs = {}) { return ago(days, Looked{signs}); }
  Scenario& believed(double p_premoult, double p_hardening = 0, double p_unseen = 0) {
    forecast = Forecast{.animal = animal_number(1),
                        .as_of = now().utc,
                        .phase = p_premoult > 0.5 ? Phase::Premoult : Phase::Feeding,
                        .p_premoult = p_premoult,
                        .p_hardening = p_hardening,
                        .p_moulted_unseen = p_unseen};
    return *this;
  }
  Scenario& temperature(double celsius, double days = 0.1) {
    air.temperature = TemperatureReading{Celsius{celsius}, days_ago(days)};
    return *this;
  }
  Scenario& humidity(double percent, double days = 0.1) {
    air.humidity = HumidityReading{Percent{percent}, days_ago(days)};
    return *this;
  }

  [[nodiscard]] AnimalState state() const {
    std::vector<Event> all = events;
    all.push_back(make_event(0, 0, animal_number(1), added));
    all.back().enclosure = tub_number(1);
    return fold_animal(std::move(all)).value();
  }
  [[nodiscard]] Instruction told() const {
    return instruct(state(), forecast ? &*forecast : nullptr, rules, &air, now());
  }
  [[nodiscard]] std::string state_told() const {
    return state_sentence(state(), forecast ? &*forecast : nullptr, rules, now());
  }
};

inline bool offers(const Instruction& said) {
  const auto feeds = [](Task task) { return task == Task::Offer || task == Task::OfferOneSmall; };
  return feeds(said.task) || std::ranges::any_of(said.also, feeds) || said.prey.has_value();
}

inline bool also(const Instruction& said, Task task) {
  return std::ranges::find(said.also, task) != said.also.end();
}

}  // namespace rackside::tests
