// Seasons of grown animals: found where there are some, at their time, and not where there are
// none.

#include <cmath>
#include <numbers>
#include <random>

#include "core/forecast/history.hpp"
#include "core/forecast/season_fit.hpp"
#include "tests/core/forecast/made_animal.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

constexpr double year = 365.25;

// An adult whose moults of the last four years were on these days of the year.
Evidence adult(const std::string& species, int number, const std::array<double, 4>& days) {
  Evidence animal{
      .key = std::to_string(number), .species = species, .stage = Stage::Adult, .instar = {}};
  animal.arrived = now - 1900;
  for (int i = 0; i < 4; ++i) {
    const double day = (std::floor(now / year) - 5 + i) * year + days[static_cast<std::size_t>(i)];
    animal.moults.push_back({day - 0.5, day + 0.5, event_number(number * 10 + i)});
  }
  return animal;
}

Evidence in_season(const std::string& species, int number, double peak, Dice& dice) {
  std::normal_distribution<double> around(peak, 15);
  return adult(species, number, {around(dice), around(dice), around(dice), around(dice)});
}

// Moults once a year or so, at any time of it.
Evidence in_no_season(const std::string& species, int number, Dice& dice) {
  std::normal_distribution<double> apart(year, 40);
  std::array<double, 4> days{std::uniform_real_distribution<double>(0, year)(dice)};
  for (std::size_t i = 1; i < 4; ++i) days[i] = days[i - 1] + apart(dice) - year;
  return adult(species, number, days);
}

std::vector<Evidence> two_species_in_season(Dice& dice) {
  std::vector<Evidence> animals;
  for (int i = 0; i < 8; ++i) {
    animals.push_back(in_season("Inventa prima", i, 100, dice));
    animals.push_back(in_season("Inventa secunda", 20 + i, 200, dice));
  }
  return animals;
}

double kept_by(const CollectionModel& model, const Evidence& animal) {
  const CycleHistory history = finished_cycles(animal, model.clock_of(animal));
  LevelFilter now = model.levels.filter(animal.species, animal.stage, animal.instar);
  follow(now, history);
  return season_of(model, animal, history, now).kept;
}

// The weight of the peaks within a step of this day of the year.
double weight_near(const PeakWeights& peaks, double day) {
  const double at = day / year * season_peaks;
  double sum = 0;
  for (std::size_t i = 0; i < season_peaks; ++i)
    if (std::abs(static_cast<double>(i) - at) <= 1.01) sum += peaks[i];
  return sum;
}

}  // namespace

TEST_CASE("each species has its season at its own time of the year") {
  Dice dice(3);
  const auto animals = two_species_in_season(dice);
  const CollectionModel model = learn(animals, now);
  CHECK(model.season.kept > 0.85);
  CHECK(model.season.sharpness >= 4);
  CHECK(weight_near(model.species_peaks.at("Inventa prima"), 100) > 0.9);
  CHECK(weight_near(model.species_peaks.at("Inventa secunda"), 200) > 0.9);
}

TEST_CASE("cycles of a year or so at any time of it make no season") {
  double kept = 0;
  constexpr int collections = 6;
  for (int seed = 0; seed < collections; ++seed) {
    Dice dice(static_cast<std::uint64_t>(seed));
    std::vector<Evidence> animals;
    for (int i = 0; i < 16; ++i)
      animals.push_back(in_no_season(i % 2 ? "Inventa prima" : "Inventa secunda", i, dice));
    kept += learn(animals, now).season.kept / collections;
  }
  CHECK(kept < 0.3);
}

TEST_CASE("an animal that moults against its species' season is not held to it") {
  Dice dice(5);
  auto animals = two_species_in_season(dice);
  animals.push_back(in_season("Inventa prima", 90, 280, dice));
  const CollectionModel model = learn(animals, now);
  CHECK(kept_by(model, animals.front()) > 0.9);
  CHECK(kept_by(model, animals.back()) < 0.1);
}

TEST_CASE("a young animal has no season") {
  Dice dice(6);
  auto animals = two_species_in_season(dice);
  Evidence young = juvenile(60);
  young.species = "Inventa prima";
  animals.push_back(young);
  CHECK(kept_by(learn(animals, now), young) == 0);
}

TEST_CASE("the bell of the year is that of von Mises") {
  // Its mean over the circle is the modified Bessel function of order 0 (Abramowitz & Stegun 1964,
  // 9.6.16), here divided by its height at the peak.
  for (const double sharpness : {1.0, 4.0, 12.0}) {
    const YearBell bell(sharpness);
    double mean = 0;
    for (std::size_t part = 0; part < year_parts; ++part) mean += bell.at(part, 7) / year_parts;
    CHECK(mean == Approx(std::cyl_bessel_i(0.0, sharpness) * std::exp(-sharpness)).epsilon(1e-9));
    CHECK(bell.at(7 * year_parts / season_peaks, 7) == 1);
  }
}

TEST_CASE("a forecast in season is lengths times the bell, as integrated day by day") {
  constexpr double middle = 5.9, spread = 0.15, sharpness = 4;
  constexpr std::size_t peak = 9;
  Character character;
  character.lengths.all = character.next_length = {{{1, middle, spread}, {0, middle, spread}}};
  character.in_season = character.lengths;
  character.season = {.sharpness = sharpness, .kept = 1, .loosened = 1, .peaks = {}};
  character.season.peaks[peak] = 1;
  character.habits = prior_habits(documented_priors(), {}, Stage::Adult);
  const double as_of = 20'000;
  const Belief belief = believe(character, {.start_earliest = as_of, .start_latest = as_of}, as_of);
  double below = 0, all = 0;
  const double median = quantile(belief, 0.5);
  for (double day = as_of + 6.05; day < as_of + 1500; day += 0.1) {
    const double angle =
        2 * std::numbers::pi * (day / year - static_cast<double>(peak) / season_peaks);
    const double z = (std::log(day - as_of) - middle) / spread;
    const double density = std::exp(sharpness * std::cos(angle) - z * z / 2) / (day - as_of);
    all += density;
    if (day < median) below += density;
  }
  CHECK(below / all == Approx(0.5).margin(0.015));
}
