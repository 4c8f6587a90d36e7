// A moult that nobody saw, told by what the animal did in the middle of a long cycle.

#include "core/forecast/traces.hpp"

#include "core/forecast/history.hpp"
#include "tests/core/forecast/made_animal.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

// The last finished cycle was twice as long as those before it and ended 40 days ago. In it the
// animal was offered a meal a week, and refused those of the last weeks and of some in the middle.
Evidence long_cycle(double refused_from, double refused_until) {
  Evidence animal{.key = "x", .species = "Haplocosmia himalayana", .stage = Stage::Juvenile};
  animal.arrived = now - 900;
  for (const double age : {820.0, 690.0, 560.0, 430.0, 300.0, 40.0})
    animal.moults.push_back({now - age - 0.5, now - age + 0.5, event_number(std::lround(age))});
  for (double age = 292; age > 40; age -= 7) {
    const bool refused = age < 62 || (age < refused_from && age > refused_until);
    offer(animal, now - age, refused ? Outcome::Refused : Outcome::Took);
  }
  return animal;
}
Evidence with_a_fast() { return long_cycle(195, 160); }
Evidence eating_on() { return long_cycle(0, 0); }

double trace(const Evidence& animal) {
  return traces_of(untaught_model(), animal, finished_cycles(animal, {})).back();
}

double next_length(const Evidence& animal) {
  return std::exp(untaught_model().character_of(animal).lengths.all[0].mean);
}

}  // namespace

TEST_CASE(
    "weeks off food in the middle of a long cycle speak for a moult there, meals against it") {
  CHECK(trace(with_a_fast()) > 1);
  CHECK(trace(eating_on()) < -1);
  Evidence seen = with_a_fast();
  look(seen, now - 175, {Sign::DarkAbdomen});
  look(seen, now - 150, {Sign::BrighterColours});
  std::ranges::sort(seen.observations, {}, &Observation::day);
  CHECK(trace(seen) > trace(with_a_fast()));
}

TEST_CASE("a long cycle in which it never stopped eating is taken for one") {
  CHECK(next_length(eating_on()) > 1.08 * next_length(with_a_fast()));
}

TEST_CASE("without meals and looks the length alone tells of a hidden moult") {
  Evidence animal = with_a_fast();
  animal.observations.clear();
  CHECK(trace(animal) == 0);
  Evidence usual = juvenile(40);
  offer(usual, now - 100, Outcome::Took);
  for (const double each : traces_of(untaught_model(), usual, finished_cycles(usual, {})))
    CHECK(each == 0);
}
