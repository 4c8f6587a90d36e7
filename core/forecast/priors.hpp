#pragma once
// What is believed before the log has said anything, as priors.toml has it.

#include <array>
#include <vector>

#include "core/event/details.hpp"

namespace rackside {

/// A number with how far off it may be: `value` on its own scale, `spread` on the scale it is
/// fitted on (the logarithm of lengths and spreads, the log odds of shares, itself otherwise).
struct Prior {
  double value = 0;
  double spread = 1;
};

inline constexpr std::size_t stages = 4;  // unknown, sling, juvenile, adult
inline constexpr std::size_t outcomes = 3;
inline constexpr std::size_t sign_phases = 4;

struct CyclePriors {
  std::array<Prior, stages> length;
  std::array<double, stages> instar_reference{};
  Prior start_spread, known_start_spread, per_instar, drift, adult_drift, pull, wander, within;
  Prior food;
  Prior adult_within;
  Prior wide_share, unseen_share;
  double pull_reference = 0;  // days
  double wide_factor = 0, wide_lean = 0;
  double species_level = 0;
  double species_drift = 0;
  double species_adult = 0;
  double at_instar = 0;
  double slow_grower = 0;
  double noticed_a_visit = 0;
};

struct MealPriors {
  double gap = 0, with_cycle = 0, reference = 0;  // days from meal to meal, at a cycle of so many
  double cycles = 0, strength = 0, longest = 0;
};

struct PremoultPriors {
  Prior length, with_cycle;
  double reference = 0;  // days of a cycle that `length` goes with
  double within = 0, within_strength = 0, between_species = 0, between_animals = 0;
};

struct HardeningPriors {
  Prior length;
  double with_cycle = 0, within = 0, strength = 0, reference = 0;
};

struct FastPriors {
  double start = 0, end = 0, long_faster_start = 0, long_faster_end = 0, strength = 0;
};

struct OfferPriors {
  std::array<double, outcomes> shares{};
  double strength = 0, species_strength = 0, animal_strength = 0;
};

struct SignPriors {
  std::array<std::array<double, sign_phases>, all_signs.size()> first{}, again{};
  double strength = 0, species_strength = 0, last_hours_factor = 0;
};

struct WarmthPriors {
  std::vector<double> thresholds;
  double upper = 0, reference = 0, daily_swing = 0;
};

struct SeasonPriors {
  double odds = 0, grown_cycle = 0, year_spread = 0, wave = 0;
};

struct Priors {
  CyclePriors cycle;
  MealPriors meals;
  PremoultPriors premoult;
  HardeningPriors hardening;
  FastPriors fast;
  OfferPriors hardening_offer, feeding_offer, fasting_offer, premoult_offer, unsettled_offer;
  SignPriors sign;
  WarmthPriors warmth;
  SeasonPriors season;
};

/// Those of priors.toml.
[[nodiscard]] const Priors& documented_priors();

}  // namespace rackside
