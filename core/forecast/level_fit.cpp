#include "core/forecast/level_fit.hpp"

#include <algorithm>
#include <cmath>

#include "core/forecast/level_numbers.hpp"
#include "core/forecast/level_rests.hpp"
#include "core/forecast/maximise.hpp"
#include "core/forecast/species_shift.hpp"

namespace rackside {
namespace {

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
    if (!again_) find_scale(model_, histories_);
    fit_usual_meals(model_, histories_);
    const int turns = again_ ? 1 : 3;
    for (int turn = 0; turn < turns; ++turn) {
      fit_parameters(turn == 0 && !again_ ? 12 : 6);
      fit_shifts();
      recentre();
      fit_instars(model_, histories_, priors_.at_instar);
      fit_usual_meals(model_, histories_);
    }
    settle_variances();
    return model_;
  }

 private:
  [[nodiscard]] double objective(const std::vector<double>& at) const {
    const LevelParameters parameters = from_vector(at, priors_, model_.parameters);
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
    model_.parameters = from_vector(at, priors_, model_.parameters);
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
  void settle_variances() {
    const auto at = to_vector(model_.parameters);
    const Objective top = [this](const auto& p) { return objective(p); };
    const auto unknown = [&](std::size_t i, double spread) {
      return 1 / std::max(1 / (spread * spread), -curvature(top, at, i));
    };
    for (std::size_t i = 0; i < stages; ++i)
      model_.start_variance[i] = unknown(i, priors_.length[i].spread);
    model_.drift_variance = unknown(place_of(&LevelParameters::drift), priors_.drift.spread);
    model_.scatter_variance = unknown(place_of(&LevelParameters::within), priors_.within.spread);
    model_.adult_scatter_variance =
        unknown(place_of(&LevelParameters::adult_within), priors_.adult_within.spread);
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
