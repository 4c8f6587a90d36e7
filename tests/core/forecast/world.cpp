#include "tests/core/forecast/world.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace rackside::tests {
namespace {

double normal(Dice& dice) { return std::normal_distribution<double>{}(dice); }
double uniform(Dice& dice) { return std::uniform_real_distribution<double>{}(dice); }

// Median 1, coefficient of variation `cv`.
double length_factor(World::Shape shape, double cv, Dice& dice) {
  switch (shape) {
    case World::Shape::Lognormal: return std::exp(cv * normal(dice));
    case World::Shape::Gamma: {
      const double k = 1 / (cv * cv);
      return std::gamma_distribution<double>{k, 1 / (k - 1.0 / 3)}(dice);
    }
    case World::Shape::Weibull: {
      const double k = std::pow(cv, -1.086);  // Justus et al. 1978, J. Appl. Meteor. 17:350
      return std::weibull_distribution<double>{k, std::pow(std::numbers::ln2, -1 / k)}(dice);
    }
  }
  return 1;
}

double median_length(const World& world, const Nature& nature, int moult) {
  if (nature.stage == Stage::Adult) return std::exp(nature.log_days);
  return std::min(std::exp(nature.log_days + nature.lengthening * moult), world.ceiling);
}

bool grows_by_days(const World& world) { return world.season_of_growth == 0 && world.food == 0; }

double end_of_growth(const World& world, const Nature& nature, double begins, double days) {
  if (grows_by_days(world)) return begins + days;
  double day = begins;
  double grown = 0;
  while (grown < days) {
    grown += growth_on(world, nature, day);
    day += 1;
  }
  return day - (grown - days) / growth_on(world, nature, day - 1);
}

// Of length_factor.
double density_of_factor(World::Shape shape, double cv, double factor) {
  switch (shape) {
    case World::Shape::Lognormal: {
      const double z = std::log(factor) / cv;
      return std::exp(-z * z / 2) / (cv * factor * std::sqrt(2 * std::numbers::pi));
    }
    case World::Shape::Gamma: {
      const double k = 1 / (cv * cv);
      const double rate = k - 1.0 / 3;
      return std::exp(k * std::log(rate) + (k - 1) * std::log(factor) - rate * factor -
                      std::lgamma(k));
    }
    case World::Shape::Weibull: {
      const double k = std::pow(cv, -1.086);
      const double scale = std::pow(std::numbers::ln2, -1 / k);
      return k / scale * std::pow(factor / scale, k - 1) * std::exp(-std::pow(factor / scale, k));
    }
  }
  return 0;
}

// The season's day nearest to a year from now.
double to_season(const World& world, const Nature& nature, double begins, double ends, Dice& dice) {
  const double year = 365.25;
  const double peak =
      nature.season_peak + year * std::round((begins + year - nature.season_peak) / year);
  const double seasonal = peak + 22 * normal(dice);
  return (1 - world.season_of_adults) * ends + world.season_of_adults * seasonal;
}

double premoult_days(const World& world, double cycle, Dice& dice) {
  switch (world.law) {
    case World::PremoultLaw::ShareOfCycle:
      return world.premoult_share * cycle * std::exp(world.premoult_spread * normal(dice));
    case World::PremoultLaw::OwnLength:
      return world.premoult_share * 130 * std::pow(cycle / 130, world.premoult_power) *
             std::exp(world.premoult_spread * normal(dice));
    case World::PremoultLaw::Gamma: {
      const double k = 1 / (world.premoult_spread * world.premoult_spread);
      return std::gamma_distribution<double>{
          k, world.premoult_share * 130 * std::pow(cycle / 130, world.premoult_power) / k}(dice);
    }
  }
  return 0;
}

void add_fasts(const World& world, bool adult, TrueCycle& cycle, Dice& dice) {
  const double a_year = adult ? world.fasts_a_year_adult : world.fasts_a_year;
  const double length = adult ? world.fast_days_adult : world.fast_days;
  if (a_year <= 0) return;
  std::exponential_distribution<double> until_next(a_year / 365.25);
  for (double day = cycle.hard_until + until_next(dice); day < cycle.premoult;
       day += until_next(dice)) {
    const double ends = day + std::gamma_distribution<double>{2, length / 2}(dice);
    cycle.fasts.emplace_back(day, std::min(ends, cycle.premoult));
    day = ends;
  }
}

}  // namespace

bool TrueCycle::fasting(double day) const {
  return std::ranges::any_of(fasts, [day](auto& f) { return day >= f.first && day < f.second; });
}

bool is_adult(const World& world, const Nature& nature, int moult) {
  return nature.stage == Stage::Adult || median_length(world, nature, moult) > 300;
}

double growth_on(const World& world, double day) {
  return 1 + world.season_of_growth * std::cos(2 * std::numbers::pi * (day / 365.25 - 0.55));
}

double hunger_on(const Nature& nature, double day) {
  return nature.hunger[day < nature.other_plan_from ? 0 : 1];
}

// Twice the food does not double the pace: growth is limited by something else in the end.
double growth_on(const World& world, const Nature& nature, double day) {
  const double meals = 1 / hunger_on(nature, day);
  return growth_on(world, day) * std::lerp(1, 1.5 * meals / (0.5 + meals), world.food);
}

double celsius_on(const World& world, double day) {
  return 12 + 12 * growth_on(world, day);  // a threshold of 12 C
}

TrueCycle next_cycle(const World& world, const Nature& nature, int moult, double begins,
                     Dice& dice) {
  const double median = median_length(world, nature, moult);
  double days = median * length_factor(world.shape, world.within, dice);
  if (uniform(dice) < world.outliers) days *= 1.5 + 0.7 * uniform(dice);
  TrueCycle cycle{.begins = begins, .ends = end_of_growth(world, nature, begins, days)};
  const bool adult = is_adult(world, nature, moult);
  if (adult && world.season_of_adults > 0)
    cycle.ends = std::max(begins + 60, to_season(world, nature, begins, cycle.ends, dice));
  const double length = cycle.ends - begins;
  cycle.premoult =
      cycle.ends - std::min(0.7 * length, std::max(2.0, premoult_days(world, length, dice)));
  cycle.hard_until =
      std::min(cycle.premoult, begins + world.hardening_days * std::pow(length / 130, 0.3) *
                                            std::exp(0.3 * normal(dice)));
  add_fasts(world, adult, cycle, dice);
  return cycle;
}

double growth_during(const World& world, const Nature& nature, const TrueCycle& cycle) {
  if (grows_by_days(world)) return cycle.ends - cycle.begins;
  double grown = 0;
  for (double day = cycle.begins; day < cycle.ends; day += 1)
    grown += growth_on(world, nature, day) * std::min(1.0, cycle.ends - day);
  return grown;
}

double density_of(const World& world, const Nature& nature, int moult, double grown) {
  constexpr int parts = 8;
  const double median = median_length(world, nature, moult);
  const double factor = grown / median;
  double outside = 0;
  for (int i = 0; i < parts; ++i) {
    const double longer = 1.5 + 0.7 * (i + 0.5) / parts;
    outside += density_of_factor(world.shape, world.within, factor / longer) / (longer * parts);
  }
  return std::lerp(density_of_factor(world.shape, world.within, factor), outside, world.outliers) /
         median;
}

double refusal_chance(const World& world, const Nature& nature, const TrueCycle& cycle,
                      double day) {
  if (day < cycle.hard_until) return world.refuses_hardening;
  if (cycle.in_premoult(day)) return world.refuses_premoult;
  return cycle.fasting(day) ? 0.92 : nature.refuses_feeding;
}

double sign_chance(const World& world, const Nature& nature, const TrueCycle& cycle, double day,
                   Sign sign) {
  const double there = world.signs_reported;
  const bool premoult = cycle.in_premoult(day);
  const double age = day - cycle.begins;
  switch (sign) {
    case Sign::DarkAbdomen: return !nature.patch ? 0 : premoult ? there : world.false_signs;
    case Sign::PlumpAbdomen:
      return premoult                                  ? there
             : age > 0.6 * (cycle.ends - cycle.begins) ? there / 3
                                                       : world.false_signs;
    case Sign::Sluggish: return premoult ? there / 2 : world.false_signs;
    case Sign::SealedIn: return premoult ? there / 2 : world.false_signs / 2;
    case Sign::Stretched: return age < 5 ? there / 2 : world.false_signs / 4;
    case Sign::BrighterColours: return age < 25 ? there : world.false_signs / 4;
    case Sign::ActiveAgain: return age > 5 && age < 25 ? there / 2 : world.false_signs / 2;
    case Sign::ShrivelledAbdomen: return world.false_signs / 2;
    case Sign::OnItsBack: return cycle.ends - day < 0.3 && premoult ? 0.9 : 0;
  }
  return 0;
}

}  // namespace rackside::tests
