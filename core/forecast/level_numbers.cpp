#include "core/forecast/level_numbers.hpp"

#include <algorithm>
#include <cmath>

namespace rackside {
namespace {

// The fitted numbers on the scale they are fitted on, each with its prior.
struct Slot {
  double LevelParameters::*member;
  Prior CyclePriors::*prior;
  enum class Scale : std::uint8_t { Plain, Log, LogOdds } scale;
};

constexpr std::array slots{
    Slot{&LevelParameters::start_spread, &CyclePriors::start_spread, Slot::Scale::Log},
    Slot{&LevelParameters::known_start_spread, &CyclePriors::known_start_spread, Slot::Scale::Log},
    Slot{&LevelParameters::per_instar, &CyclePriors::per_instar, Slot::Scale::Plain},
    Slot{&LevelParameters::drift, &CyclePriors::drift, Slot::Scale::Plain},
    Slot{&LevelParameters::adult_drift, &CyclePriors::adult_drift, Slot::Scale::Plain},
    Slot{&LevelParameters::pull, &CyclePriors::pull, Slot::Scale::Plain},
    Slot{&LevelParameters::food, &CyclePriors::food, Slot::Scale::Log},
    Slot{&LevelParameters::wander, &CyclePriors::wander, Slot::Scale::Log},
    Slot{&LevelParameters::within, &CyclePriors::within, Slot::Scale::Log},
    Slot{&LevelParameters::adult_within, &CyclePriors::adult_within, Slot::Scale::Log},
    Slot{&LevelParameters::wide_share, &CyclePriors::wide_share, Slot::Scale::LogOdds},
    Slot{&LevelParameters::unseen_share, &CyclePriors::unseen_share, Slot::Scale::LogOdds},
};

double to_scale(double value, Slot::Scale scale) {
  switch (scale) {
    case Slot::Scale::Plain: return value;
    case Slot::Scale::Log: return std::log(value);
    case Slot::Scale::LogOdds: return std::log(value / (1 - value));
  }
  return value;
}

double from_scale(double value, Slot::Scale scale) {
  switch (scale) {
    case Slot::Scale::Plain: return value;
    case Slot::Scale::Log: return std::exp(std::clamp(value, -8.0, 0.5));
    case Slot::Scale::LogOdds: return 1 / (1 + std::exp(-std::clamp(value, -9.0, 2.0)));
  }
  return value;
}

}  // namespace

UsualMeals usual_meals(const MealPriors& priors) {
  return {std::log(priors.gap) - priors.with_cycle * std::log(priors.reference), priors.with_cycle};
}

LevelParameters prior_parameters(const CyclePriors& priors) {
  LevelParameters parameters;
  for (std::size_t i = 0; i < stages; ++i) parameters.start[i] = std::log(priors.length[i].value);
  for (const Slot& slot : slots) parameters.*slot.member = (priors.*slot.prior).value;
  parameters.pull_at = std::log(priors.pull_reference);
  parameters.wide_factor = priors.wide_factor;
  parameters.wide_lean = priors.wide_lean;
  parameters.instar_reference = priors.instar_reference;
  parameters.meals = usual_meals(documented_priors().meals);
  return parameters;
}

std::vector<double> to_vector(const LevelParameters& parameters) {
  std::vector<double> vector(parameters.start.begin(), parameters.start.end());
  for (const Slot& slot : slots) vector.push_back(to_scale(parameters.*slot.member, slot.scale));
  return vector;
}

LevelParameters from_vector(const std::vector<double>& vector, const CyclePriors& priors,
                            const LevelParameters& others) {
  LevelParameters parameters = prior_parameters(priors);
  parameters.at_instar = others.at_instar;
  parameters.at_instar_variance = others.at_instar_variance;
  parameters.meals = others.meals;
  std::copy_n(vector.begin(), stages, parameters.start.begin());
  for (std::size_t i = 0; i < slots.size(); ++i)
    parameters.*slots[i].member = from_scale(vector[stages + i], slots[i].scale);
  return parameters;
}

double log_prior(const std::vector<double>& vector, const CyclePriors& priors) {
  double sum = 0;
  const auto add = [&sum](double at, double middle, double spread) {
    sum -= (at - middle) * (at - middle) / (2 * spread * spread);
  };
  for (std::size_t i = 0; i < stages; ++i)
    add(vector[i], std::log(priors.length[i].value), priors.length[i].spread);
  for (std::size_t i = 0; i < slots.size(); ++i) {
    const Prior& prior = priors.*slots[i].prior;
    add(vector[stages + i], to_scale(prior.value, slots[i].scale), prior.spread);
  }
  return sum;
}

std::size_t place_of(double LevelParameters::*member) {
  const auto slot = std::ranges::find(slots, member, &Slot::member);
  return stages + static_cast<std::size_t>(slot - slots.begin());
}

}  // namespace rackside
