#include "core/forecast/habits.hpp"

#include <algorithm>
#include <cmath>

namespace rackside {
namespace {

template <std::size_t N>
void add_to(std::array<double, N>& sum, const std::array<double, N>& more, double weight) {
  for (std::size_t i = 0; i < N; ++i) sum[i] += weight * more[i];
}

template <class Inner, std::size_t N>
void add_to(std::array<Inner, N>& sum, const std::array<Inner, N>& more, double weight) {
  for (std::size_t i = 0; i < N; ++i) add_to(sum[i], more[i], weight);
}

Shares pooled(const Shares& parent, const Shares& counts, double strength) {
  Shares shares{};
  const double total = strength + counts[0] + counts[1] + counts[2];
  for (std::size_t i = 0; i < outcomes; ++i) shares[i] = (strength * parent[i] + counts[i]) / total;
  return shares;
}

struct Strengths {
  std::array<double, appetites> offer;
  double unsettled, sign, fast, premoult_spread, hardening;
};

// An infinite strength: too little is ever seen of this to learn it at that level.
constexpr double never = 1e9;

Strengths strengths_of(const Priors& p, Pool pool) {
  switch (pool) {
    case Pool::Collection:
      return {{p.hardening_offer.strength, p.feeding_offer.strength, p.fasting_offer.strength,
               p.premoult_offer.strength},
              p.unsettled_offer.strength,
              p.sign.strength,
              p.fast.strength,
              p.premoult.within_strength,
              p.hardening.strength};
    case Pool::Species:
      return {{30, p.feeding_offer.strength, never, p.premoult_offer.species_strength},
              never,
              p.sign.species_strength,
              2 * p.fast.strength,
              20,
              20};
    case Pool::Animal:
      return {{never, p.feeding_offer.animal_strength, never, p.premoult_offer.animal_strength},
              never,
              never,
              3 * p.fast.strength,
              never,
              never};
  }
  return {};
}

// Posterior of the line's two numbers under independent normal priors, and of its spread.
LengthLaw updated_line(LengthLaw law, const HabitCounts& c, const PremoultPriors& priors) {
  const double noise = law.spread * law.spread;
  const double median_weight = noise / (priors.length.spread * priors.length.spread);
  const double slope_weight = noise / (priors.with_cycle.spread * priors.with_cycle.spread);
  const double a = c.premoults + median_weight;
  const double b = c.xx + slope_weight;
  const double right = c.y + median_weight * law.log_median;
  const double below = c.xy + slope_weight * law.with_cycle;
  const double determinant = a * b - c.x * c.x;
  law.log_median = (right * b - c.x * below) / determinant;
  law.with_cycle = (a * below - c.x * right) / determinant;
  const double squares = c.yy - 2 * law.log_median * c.y - 2 * law.with_cycle * c.xy +
                         law.log_median * law.log_median * c.premoults +
                         2 * law.log_median * law.with_cycle * c.x +
                         law.with_cycle * law.with_cycle * c.xx;
  const double strength = priors.within_strength;
  law.spread = std::sqrt((strength * priors.within * priors.within + std::max(0.0, squares)) /
                         (strength + c.premoults));
  return law;
}

// Only the height of the line differs between species and between animals.
LengthLaw shifted_line(LengthLaw law, const HabitCounts& c, double between) {
  const double residuals = c.y - law.log_median * c.premoults - law.with_cycle * c.x;
  law.log_median += residuals / (c.premoults + law.spread * law.spread / (between * between));
  return law;
}

LengthLaw updated_premoult(const LengthLaw& law, const HabitCounts& counts,
                           const PremoultPriors& priors, Pool pool) {
  switch (pool) {
    case Pool::Collection: return updated_line(law, counts, priors);
    case Pool::Species: return shifted_line(law, counts, priors.between_species);
    case Pool::Animal: return shifted_line(law, counts, priors.between_animals);
  }
  return law;
}

}  // namespace

void HabitCounts::add(const HabitCounts& other, double weight) {
  add_to(offer, other.offer, weight);
  add_to(unsettled, other.unsettled, weight);
  add_to(seen, other.seen, weight);
  add_to(looked, other.looked, weight);
  using Member = double HabitCounts::*;
  for (const Member member :
       {&HabitCounts::fasts, &HabitCounts::fasts_ended, &HabitCounts::feeding_days,
        &HabitCounts::fasting_days, &HabitCounts::premoults, &HabitCounts::x, &HabitCounts::y,
        &HabitCounts::xx, &HabitCounts::xy, &HabitCounts::yy, &HabitCounts::hardenings,
        &HabitCounts::hardening_y})
    this->*member += weight * other.*member;
}

Habits prior_habits(const Priors& p, const Traits& traits, Stage stage) {
  Habits habits;
  habits.offer = {p.hardening_offer.shares, p.feeding_offer.shares, p.fasting_offer.shares,
                  p.premoult_offer.shares};
  habits.unsettled = p.unsettled_offer.shares;
  for (std::size_t sign = 0; sign < all_signs.size(); ++sign)
    for (std::size_t phase = 0; phase < sign_phases; ++phase) {
      habits.sign[0][phase][sign] = p.sign.first[sign][phase];
      habits.sign[1][phase][sign] = p.sign.again[sign][phase];
    }
  const bool long_faster = stage == Stage::Adult && traits.long_fasts.value_or(false);
  habits.fast_start = long_faster ? p.fast.long_faster_start : p.fast.start;
  habits.fast_end = long_faster ? p.fast.long_faster_end : p.fast.end;
  habits.hardening = {std::log(p.hardening.length.value), p.hardening.with_cycle,
                      p.hardening.within, std::log(p.hardening.reference)};
  habits.premoult = {std::log(p.premoult.length.value), p.premoult.with_cycle.value,
                     p.premoult.within, std::log(p.premoult.reference)};
  habits.last_hours_factor = p.sign.last_hours_factor;
  return habits;
}

Habits updated(const Habits& parent, const HabitCounts& counts, const Priors& priors, Pool pool) {
  const Strengths strength = strengths_of(priors, pool);
  Habits habits = parent;
  for (std::size_t i = 0; i < appetites; ++i)
    habits.offer[i] = pooled(parent.offer[i], counts.offer[i], strength.offer[i]);
  habits.unsettled = pooled(parent.unsettled, counts.unsettled, strength.unsettled);
  for (std::size_t again = 0; again < 2; ++again)
    for (std::size_t phase = 0; phase < sign_phases; ++phase)
      for (std::size_t sign = 0; sign < all_signs.size(); ++sign)
        habits.sign[again][phase][sign] =
            (strength.sign * parent.sign[again][phase][sign] + counts.seen[again][phase][sign]) /
            (strength.sign + counts.looked[again][phase][sign]);
  habits.fast_start =
      (strength.fast + counts.fasts) / (strength.fast / parent.fast_start + counts.feeding_days);
  habits.fast_end = (strength.fast + counts.fasts_ended) /
                    (strength.fast / parent.fast_end + counts.fasting_days);
  habits.hardening.log_median += counts.hardening_y / (counts.hardenings + strength.hardening);
  habits.premoult = updated_premoult(parent.premoult, counts, priors.premoult, pool);
  return habits;
}

SignSet mute_signs(const Traits& traits, Stage stage) {
  SignSet mute{Sign::ShrivelledAbdomen};  // speaks of water and health, not of the moult
  if (!traits.urticating_patch.value_or(true)) mute.insert(Sign::DarkAbdomen);
  if (!traits.burrows_or_webs.value_or(true)) mute.insert(Sign::SealedIn);
  if (stage == Stage::Adult) mute.insert(Sign::PlumpAbdomen);
  return mute;
}

}  // namespace rackside
