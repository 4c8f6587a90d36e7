// What every keeper knows and the forecast must reproduce. Common practice, no source.

#include <cmath>

#include "core/forecast/habits.hpp"
#include "core/forecast/history.hpp"
#include "tests/core/forecast/made_animal.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

Evidence of_species(const std::string& species, double last_moult_days_ago) {
  Evidence animal = juvenile(last_moult_days_ago);
  animal.species = species;
  return animal;
}

double moved_by(const Evidence& animal, SignSet signs) {
  Evidence nothing = animal, seen = animal;
  look(nothing, now - 1, {});
  look(seen, now - 1, signs);
  return premoult(seen) - premoult(nothing);
}

Evidence adult(double last_moult_days_ago) {
  Evidence animal{.key = "x", .species = "Inventa prima", .stage = Stage::Adult};
  animal.arrived = now - last_moult_days_ago - 300;
  animal.moults.push_back({now - last_moult_days_ago - 0.5, now - last_moult_days_ago + 0.5, {}});
  return animal;
}

double median_to_next(const Evidence& animal) {
  return forecast(untaught_model(), animal, moment_of(now)).next_moult[9];
}

}  // namespace

TEST_CASE("the more signs together, the more likely is premoult") {
  const Evidence animal = of_species("Tliltocatl epicureanus", 100);
  const double one = moved_by(animal, {Sign::DarkAbdomen});
  const double two = moved_by(animal, {Sign::DarkAbdomen, Sign::PlumpAbdomen});
  const double three = moved_by(animal, {Sign::DarkAbdomen, Sign::PlumpAbdomen, Sign::Sluggish});
  CHECK(one > 0.05);
  CHECK(two > one + 0.02);
  CHECK(three > two);
  Evidence fasting = animal, and_dark = animal;
  for (int week = 3; week > 0; --week) {
    offer(fasting, now - 7 * week, Outcome::Refused);
    offer(and_dark, now - 7 * week, Outcome::Refused);
  }
  look(and_dark, now - 1, {Sign::DarkAbdomen});
  CHECK(premoult(and_dark) > premoult(fasting));
}

TEST_CASE("a bald patch gone dark means a moult within the next few weeks") {
  Evidence animal = of_species("Tliltocatl epicureanus", 115);
  const double before = median_to_next(animal);
  for (int week = 3; week > 0; --week) offer(animal, now - 7 * week, Outcome::Refused);
  look(animal, now - 15, {});
  look(animal, now - 8, {Sign::DarkAbdomen});
  look(animal, now - 1, {Sign::DarkAbdomen});
  const Forecast told = forecast(untaught_model(), animal, moment_of(now));
  CHECK(told.next_moult[9] < before - 3);
  CHECK(told.next_moult[9] > 0);
  CHECK(told.next_moult[9] < 28);
}

TEST_CASE("a full abdomen is a sign in growing animals and none in adults") {
  CHECK(moved_by(juvenile(110), {Sign::PlumpAbdomen}) > 0.05);
  CHECK(moved_by(adult(330), {Sign::PlumpAbdomen}) == Approx(0).margin(1e-9));
}

TEST_CASE("a sealed retreat is a sign in those that web or burrow and none in others") {
  CHECK(moved_by(of_species("Haplocosmia himalayana", 110), {Sign::SealedIn}) > 0.1);
  CHECK_FALSE(mute_signs({.burrows_or_webs = true}, Stage::Juvenile).has(Sign::SealedIn));
  CHECK(mute_signs({.burrows_or_webs = false}, Stage::Juvenile).has(Sign::SealedIn));
}

TEST_CASE(
    "little is taken in the weeks before a moult and after it, and a meal is after about one") {
  const Habits habits = prior_habits(documented_priors(), {}, Stage::Juvenile);
  for (const Appetite off : {Appetite::Hardening, Appetite::Premoult})
    CHECK(habits.offer[static_cast<std::size_t>(off)][0] < 0.15);
  CHECK(habits.offer[static_cast<std::size_t>(Appetite::Feeding)][0] > 0.8);
  const auto hard = [](double days_ago) {
    return forecast(untaught_model(), juvenile(days_ago), moment_of(now)).p_hardening;
  };
  CHECK(hard(2) > 0.9);
  CHECK(hard(7) > 0.3);
  CHECK(hard(7) < 0.7);
  CHECK(hard(16) < 0.1);
  const double premoult_days = std::exp(habits.premoult.log_median);
  CHECK(premoult_days > 7);
  CHECK(premoult_days < 28);
}

TEST_CASE("juveniles moult every few months, adults about once a year") {
  CHECK(median_to_next(juvenile(1)) > 90);
  CHECK(median_to_next(juvenile(1)) < 200);
  CHECK(median_to_next(adult(1)) > 300);
  CHECK(median_to_next(adult(1)) < 430);
}

TEST_CASE("a mature male is not expected to moult again, and is told why") {
  Evidence male = juvenile(200);
  for (int week = 8; week > 0; --week) offer(male, now - 7 * week, Outcome::Refused);
  CHECK(forecast(untaught_model(), male, moment_of(now)).moult_expected);
  male.matured = now - 200;
  const Forecast told = forecast(untaught_model(), male, moment_of(now));
  CHECK_FALSE(told.moult_expected);
  CHECK(told.phase == Phase::Finished);
  CHECK(told.p_premoult == 0);
  CHECK(told.p_moulted_unseen == 0);
  REQUIRE(told.why.size() == 1);
  CHECK(told.why[0].text.find("never moults again") != std::string::npos);
  // The months in which he does not moult teach nothing about how long cycles are.
  CHECK_FALSE(all_cycles(male, {}, now).cycles.back().running);
}

TEST_CASE("a fast of a cold or rehoused animal counts for less") {
  Evidence settled = juvenile(115), unsettled = juvenile(115);
  for (int week = 3; week > 0; --week) {
    offer(settled, now - 7 * week, Outcome::Refused);
    offer(unsettled, now - 7 * week, Outcome::Refused);
    unsettled.observations.back().unsettled = true;
  }
  CHECK(premoult(unsettled) < 0.8 * premoult(settled));
}

TEST_CASE("adult females that moulted in one season are expected in it again") {
  // Two years of cycles that scatter by three months, all ended in the same weeks of the year.
  std::vector<Evidence> animals;
  for (int i = 0; i < 24; ++i) {
    Evidence animal{.key = std::to_string(i), .species = "Inventa prima", .stage = Stage::Adult};
    animal.arrived = now - 1800;
    for (int year = 4; year > 0; --year) {
      const double day = now - 365.25 * year + 120 + (i * 7 + year * 11) % 21 - 10;
      animal.moults.push_back({day - 3, day, event_number(i * 10 + year)});
    }
    animals.push_back(animal);
  }
  const CollectionModel model = learn(animals, now);
  const double median = forecast(model, animals[0], moment_of(now)).next_moult[9];
  CHECK(median == Approx(120).margin(20));
  CHECK(median_to_next(animals[0]) > 0);
}
