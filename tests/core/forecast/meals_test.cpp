// More food brings the next moult sooner (common practice, no source), and appetite that goes for a
// moult is not hunger.

#include "core/forecast/meals.hpp"

#include "tests/core/forecast/made_animal.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

const MealPriors& priors() { return documented_priors().meals; }

// In the cycle that runs.
double mean_gap(const Evidence& animal) {
  const MealGaps meals = meals_by_cycle(animal, priors()).back();
  return meals.days / meals.gaps;
}

// A meal taken every so many days from one day to another.
void feed(Evidence& animal, double from, double until, double every) {
  for (double day = from; day < until; day += every) offer(animal, day, Outcome::Took);
}

// Moulted 60 days ago as all before it, has eaten every so many days since.
Evidence fed_every(double days) {
  Evidence animal = juvenile(60);
  feed(animal, now - 450, now - 60, 7);
  feed(animal, now - 50, now, days);
  return animal;
}

// Animals fed every five to fifteen days whose cycles go with that to this power.
std::vector<Evidence> collection(double power) {
  std::vector<Evidence> animals;
  for (int i = 0; i < 24; ++i) {
    Evidence animal{.key = std::to_string(i), .species = "Inventa prima", .stage = Stage::Juvenile};
    animal.arrived = now - 1500 + 20 * i;
    double day = animal.arrived + 30;
    for (int cycle = 0; cycle < 9; ++cycle) {
      const double every = (i + cycle) % 3 == 0 ? 5 : (i + cycle) % 3 == 1 ? 9 : 15;
      const double wobble = 0.1 * std::sin(i * 7.0 + cycle * 3.0);
      const double next = day + 130 * std::exp(power * std::log(every / 7) + wobble);
      if (next > now) break;
      feed(animal, day + 8, next - 20, every);
      for (double off = next - 18; off < next; off += 6) offer(animal, off, Outcome::Refused);
      animal.moults.push_back({next - 0.5, next + 0.5, event_number(i * 100 + cycle)});
      day = next;
    }
    animals.push_back(std::move(animal));
  }
  return animals;
}

double median(const CollectionModel& model, const Evidence& animal) {
  return forecast(model, animal, moment_of(now)).next_moult[9];
}

// Days by which an animal fed every fourth day is ahead of one fed every twelfth.
double ahead(const CollectionModel& model) {
  return median(model, fed_every(12)) - median(model, fed_every(4));
}

}  // namespace

TEST_CASE("how often an animal is fed is told by the days between meals and by nothing else") {
  Evidence animal = juvenile(60);
  for (const MealGaps& none : meals_by_cycle(animal, priors())) CHECK(none.gaps == 0);
  feed(animal, now - 50, now - 1, 14);
  CHECK(mean_gap(animal) == Approx(14));
  for (double day = now - 0.9; day < now; day += 0.1) offer(animal, day, Outcome::Refused);
  CHECK(mean_gap(animal) == Approx(14));
  Evidence usual = juvenile(60);
  feed(usual, now - 450, now, 7);
  CHECK(meals_by_cycle(usual, priors()).size() == 5);
  CHECK(mean_gap(usual) == Approx(7));
}

TEST_CASE("weeks off food are not hunger, and weeks without a record not all of them") {
  Evidence animal = juvenile(120);
  feed(animal, now - 110, now - 60, 7);
  Evidence away = animal;
  for (double day = now - 57; day < now - 5; day += 7) offer(animal, day, Outcome::Refused);
  offer(animal, now - 5, Outcome::Took);
  CHECK(mean_gap(animal) == Approx(7));
  offer(away, now - 5, Outcome::Took);
  CHECK(mean_gap(away) > 7);
  CHECK(mean_gap(away) < 10);
}

TEST_CASE(
    "of two animals that differ only in how often they were fed the one fed more is due first") {
  const CollectionModel model = untaught_model();
  CHECK(median(model, fed_every(4)) < median(model, fed_every(7)) - 1);
  CHECK(median(model, fed_every(7)) < median(model, fed_every(12)) - 1);
}

TEST_CASE("how much food does is learnt from the log") {
  const double untaught = ahead(untaught_model());
  const CollectionModel much = learn(collection(0.45), now);
  const CollectionModel nothing = learn(collection(0), now);
  const double truly = 130 * (std::pow(12.0 / 7, 0.45) - std::pow(4.0 / 7, 0.45));
  CHECK(ahead(much) == Approx(truly).epsilon(0.25));
  CHECK(nothing.levels.parameters.food < 0.06);
  CHECK(ahead(much) > 1.4 * untaught);
  CHECK(ahead(nothing) < 0.5 * untaught);
}

TEST_CASE("cycles that are long for a long premoult are not put down to hunger") {
  std::vector<Evidence> animals;
  for (int i = 0; i < 24; ++i) {
    Evidence animal{.key = std::to_string(i), .species = "Inventa prima", .stage = Stage::Juvenile};
    animal.arrived = now - 1300;
    double day = animal.arrived + 30;
    for (int cycle = 0; cycle < 7; ++cycle) {
      const double off = 15 + 20 * ((i * 5 + cycle * 3) % 4);
      const double next = day + 100 + off;
      feed(animal, day + 8, day + 100, 7);
      for (double refused = day + 100; refused < next; refused += 7)
        offer(animal, refused, Outcome::Refused);
      if (i % 3 == 0) animal.observations.back().outcome = Outcome::Took;  // now and then
      animal.moults.push_back({next - 0.5, next + 0.5, event_number(i * 100 + cycle)});
      day = next;
    }
    animals.push_back(std::move(animal));
  }
  CHECK(learn(animals, now).levels.parameters.food < 0.3);
}
