#include "core/forecast/level_fit.hpp"

#include <algorithm>
#include <cmath>

#include "core/forecast/maximise.hpp"

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

std::vector<double> to_vector(const LevelParameters& parameters) {
  std::vector<double> vector(parameters.start.begin(), parameters.start.end());
  for (const Slot& slot : slots) vector.push_back(to_scale(parameters.*slot.member, slot.scale));
  return vector;
}

LevelParameters from_vector(const std::vector<double>& vector, const CyclePriors& priors,
                            const std::array<double, instars>& at_instar) {
  LevelParameters parameters = prior_parameters(priors);
  parameters.at_instar = at_instar;
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

double log_likelihood(std::span<const CycleHistory> animals, const LevelParameters& parameters,
                      const SpeciesShift& shift) {
  double sum = 0;
  for (const CycleHistory& animal : animals) {
    LevelFilter filter(parameters, shift, animal.stage, animal.instar);
    sum += follow(filter, animal);
  }
  return sum;
}

double growth_of(const std::string& species, const CyclePriors& priors) {
  switch (traits_of(species).growth) {
    case Growth::Slow: return priors.slow_grower;
    case Growth::Fast: return -priors.slow_grower;
    case Growth::Unknown: return 0;
  }
  return 0;
}

// The mode of one species' three numbers with their variances, the rest given.
SpeciesShift fit_shift(const SpeciesHistories& species, const LevelParameters& parameters,
                       const CyclePriors& priors, const SpeciesShift& from) {
  const double growth = growth_of(species.species, priors);
  const std::array spreads{priors.species_level, priors.species_drift, priors.species_adult};
  const Objective objective = [&](const std::vector<double>& at) {
    double penalty = 0;
    for (std::size_t i = 0; i < spreads.size(); ++i) {
      const double z = (at[i] - (i == 0 ? growth : 0)) / spreads[i];
      penalty += z * z / 2;
    }
    return log_likelihood(species.animals, parameters, {at[0], at[1], at[2]}) - penalty;
  };
  const std::vector<double> at = maximise(
      objective, {from.level, from.drift, from.adult},
      {.most_steps = 8, .tolerance = 0.01, .step = 1e-4, .differences = Differences::Forward});
  const auto variance = [&](std::size_t i) {
    return 1 / std::max(1 / (spreads[i] * spreads[i]), -curvature(objective, at, i));
  };
  return {at[0], at[1], at[2], variance(0), variance(1), variance(2)};
}

SpeciesShift without_variance(const SpeciesShift& shift) {
  return {shift.level, shift.drift, shift.adult};
}

class Fit {
 public:
  Fit(std::span<const SpeciesHistories> histories, const CyclePriors& priors,
      const LevelModel* start_from)
      : histories_(histories), priors_(priors) {
    if (start_from != nullptr)
      model_ = *start_from;
    else
      model_.parameters = prior_parameters(priors);
    for (const SpeciesHistories& species : histories)
      model_.shifts.try_emplace(species.species,
                                SpeciesShift{.level = growth_of(species.species, priors)});
    again_ = start_from != nullptr;
  }

  LevelModel run() {
    if (!again_) find_scale();
    const int turns = again_ ? 1 : 3;
    for (int turn = 0; turn < turns; ++turn) {
      fit_parameters(turn == 0 ? 12 : 6);
      fit_shifts();
      recentre();
      fit_instars();
    }
    settle_variances();
    return model_;
  }

 private:
  [[nodiscard]] double objective(const std::vector<double>& at) const {
    const LevelParameters parameters = from_vector(at, priors_, model_.parameters.at_instar);
    double sum = log_prior(at, priors_);
    for (const SpeciesHistories& species : histories_)
      sum += log_likelihood(species.animals, parameters, plain(species.species));
    return sum;
  }
  // The shift as a number: its variance is for forecasts, not for the fit.
  [[nodiscard]] SpeciesShift plain(const std::string& species) const {
    return without_variance(model_.shifts.at(species));
  }
  void fit_parameters(int steps) {
    const auto at =
        maximise([this](const auto& p) { return objective(p); }, to_vector(model_.parameters),
                 {.most_steps = steps,
                  .tolerance = 0.05,
                  .step = 1e-4,
                  .differences = Differences::Forward});
    model_.parameters = from_vector(at, priors_, model_.parameters.at_instar);
  }
  void fit_shifts() {
    for (const SpeciesHistories& species : histories_) {
      SpeciesShift& shift = model_.shifts.at(species.species);
      shift = fit_shift(species, model_.parameters, priors_, shift);
    }
  }
  // What the species have in common belongs to the collection: the same likelihood, and less for
  // the species' priors to bear.
  void recentre() {
    if (model_.shifts.empty()) return;
    const auto n = static_cast<double>(model_.shifts.size());
    double level = 0, drift = 0;
    for (const auto& [name, shift] : model_.shifts) {
      level += (shift.level - growth_of(name, priors_)) / n;
      drift += shift.drift / n;
    }
    for (double& start : model_.parameters.start) start += level;
    model_.parameters.drift += drift;
    for (auto& [name, shift] : model_.shifts) {
      shift.level -= level;
      shift.drift -= drift;
    }
  }
  // What is left over of each finished cycle, given all that was known before it, with how much it
  // weighs and the instar it was in.
  template <class Visit>
  void each_rest(const Visit& visit) const {
    for (const SpeciesHistories& species : histories_)
      for (const CycleHistory& animal : species.animals) {
        LevelFilter filter(model_.parameters, plain(species.species), animal.stage, animal.instar);
        for (const LoggedCycle& cycle : animal.cycles) {
          const auto instar = filter.instar();
          const double expected = filter.expected();
          const double deviation = filter.length()[0].deviation;
          filter.observe(cycle);
          if (cycle.running || cycle.start == LoggedCycle::Start::Arrival) continue;
          visit(instar, (cycle.low + cycle.high) / 2 - expected,
                (1 - filter.hid_a_moult()) / (deviation * deviation + cycle.noise));
        }
      }
  }
  // Brings all starts near the log at once, however far from the priors its animals are; the climb
  // from there is short.
  void find_scale() {
    for (int step = 0; step < 4; ++step) {
      double weight = 1, sum = 0;
      each_rest([&](auto, double rest, double precision) {
        weight += precision;
        sum += precision * rest;
      });
      for (double& start : model_.parameters.start) start += sum / weight;
    }
  }
  // Shrunken means of what is left over at each instar, given all the rest.
  void fit_instars() {
    const double held = 1 / (priors_.at_instar * priors_.at_instar);
    for (int step = 0; step < 4; ++step) {
      std::array<double, instars> weight{}, sum{};
      each_rest([&](auto instar, double rest, double precision) {
        if (!instar) return;
        weight[std::min(*instar, instars - 1)] += precision;
        sum[std::min(*instar, instars - 1)] += precision * rest;
      });
      for (std::size_t i = 0; i < instars; ++i) {
        double& at = model_.parameters.at_instar[i];
        if (weight[i] > 0) at = (weight[i] * at + sum[i]) / (weight[i] + held);
      }
    }
  }
  void settle_variances() {
    const auto at = to_vector(model_.parameters);
    const Objective top = [this](const auto& p) { return objective(p); };
    const auto unknown = [&](std::size_t i, double spread) {
      return 1 / std::max(1 / (spread * spread), -curvature(top, at, i));
    };
    for (std::size_t i = 0; i < stages; ++i)
      model_.start_variance[i] = unknown(i, priors_.length[i].spread);
    model_.drift_variance = unknown(stages + 3, priors_.drift.spread);
    model_.scatter_variance = unknown(stages + 7, priors_.within.spread);
    model_.adult_scatter_variance = unknown(stages + 8, priors_.adult_within.spread);
    model_.log_posterior = objective(at);
    const auto square = [](double spread) { return spread * spread; };
    model_.unknown_species = {0,
                              0,
                              0,
                              square(priors_.species_level),
                              square(priors_.species_drift),
                              square(priors_.species_adult)};
  }

  std::span<const SpeciesHistories> histories_;
  const CyclePriors& priors_;
  LevelModel model_;
  bool again_ = false;
};

}  // namespace

LevelParameters prior_parameters(const CyclePriors& priors) {
  LevelParameters parameters;
  for (std::size_t i = 0; i < stages; ++i) parameters.start[i] = std::log(priors.length[i].value);
  for (const Slot& slot : slots) parameters.*slot.member = (priors.*slot.prior).value;
  parameters.pull_at = std::log(priors.pull_reference);
  parameters.wide_factor = priors.wide_factor;
  parameters.instar_reference = priors.instar_reference;
  return parameters;
}

SpeciesShift LevelModel::shift_of(const std::string& species) const {
  if (const auto found = shifts.find(species); found != shifts.end()) return found->second;
  SpeciesShift shift = unknown_species;
  shift.level = growth_of(species, documented_priors().cycle);
  return shift;
}

LevelFilter LevelModel::filter(const std::string& species, Stage stage,
                               std::optional<int> instar) const {
  SpeciesShift shift = shift_of(species);
  const bool adult = stage == Stage::Adult || stage == Stage::MatureMale;
  shift.level_variance += start_variance[start_index(stage, instar)];
  shift.drift_variance += drift_variance;
  shift.scatter_variance = adult ? adult_scatter_variance : scatter_variance;
  return LevelFilter(parameters, shift, stage, instar);
}

double log_likelihood(std::span<const SpeciesHistories> histories, const LevelModel& model) {
  double sum = 0;
  for (const SpeciesHistories& species : histories)
    sum += log_likelihood(species.animals, model.parameters,
                          without_variance(model.shift_of(species.species)));
  return sum;
}

LevelModel fit_levels(std::span<const SpeciesHistories> histories, const CyclePriors& priors,
                      const LevelModel* start_from) {
  return Fit(histories, priors, start_from).run();
}

}  // namespace rackside
