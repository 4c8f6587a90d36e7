#include "core/forecast/level.hpp"

#include <algorithm>
#include <cmath>

namespace rackside {
std::size_t start_index(Stage stage, std::optional<int> instar) {
  if (stage == Stage::MatureMale) return static_cast<std::size_t>(Stage::Adult);
  // An instar says more than "unknown": counted from that of a juvenile.
  if (stage == Stage::Unknown && instar) return static_cast<std::size_t>(Stage::Juvenile);
  return static_cast<std::size_t>(stage);
}

LevelFilter::LevelFilter(const LevelParameters& p, const SpeciesShift& shift, Stage stage,
                         std::optional<int> instar)
    : parameters_(&p), shift_(shift), adult_(stage == Stage::Adult || stage == Stage::MatureMale) {
  const std::size_t at = start_index(stage, instar);
  const double apart = shift.level + (adult_ ? shift.adult : 0);
  level_.mean = p.start[at] + apart;
  double spread = p.start_spread;
  if (instar) {
    if (!adult_) level_.mean += p.per_instar * (*instar - p.instar_reference[at]);
    spread = p.known_start_spread;
    if (!adult_ && *instar >= 0) instar_ = static_cast<std::size_t>(*instar);
  } else if (stage == Stage::Unknown) {
    spread = std::hypot(spread, 0.4);  // anything from a sling to an adult
  }
  level_.variance = spread * spread + shift.level_variance + (adult_ ? shift.adult_variance : 0);
  held_[0] = {1, level_};
  list_ways();
}

void LevelFilter::list_ways() {
  const LevelParameters& p = *parameters_;
  const double variance = within() * within();
  const double seen = 1 - p.unseen_share;
  // Two or three cycles in a row: the log of a sum of lengths that each grow by exp(drift), with
  // its variance by the delta method.
  const double grow = std::exp(drift_at(level_.mean));
  const double two = 1 + grow;
  const double three = two + grow * grow;
  const double squares = 1 + grow * grow;
  ways_ = {{{seen * (1 - p.wide_share), 0, variance, 0},
            {seen * p.wide_share, p.wide_lean, variance * p.wide_factor * p.wide_factor, 0},
            {p.unseen_share * seen, std::log(two), variance * squares / (two * two), 1},
            {p.unseen_share * p.unseen_share, std::log(three),
             variance * (squares + grow * grow * grow * grow) / (three * three), 2}}};
}

double LevelFilter::log_mean_scatter() const {
  const double variance = within() * within();
  const double factor = parameters_->wide_factor * parameters_->wide_factor;
  return std::log((1 - parameters_->wide_share) * std::exp(variance / 2) +
                  parameters_->wide_share *
                      std::exp(parameters_->wide_lean + variance * factor / 2));
}

double LevelFilter::drift_at(double level) const {
  if (adult_) return parameters_->adult_drift;
  return parameters_->drift + shift_.drift - parameters_->pull * (level - parameters_->pull_at);
}

Level LevelFilter::advanced(const Level& level) const {
  const double keeps = adult_ ? 1 : 1 - parameters_->pull;
  return {level.mean + drift_at(level.mean), keeps * keeps * level.variance +
                                                 parameters_->wander * parameters_->wander +
                                                 (adult_ ? 0 : shift_.drift_variance)};
}

double LevelFilter::off_the_line(std::size_t moults_ahead) const {
  const double by_food = parameters_->food * scarcity_;
  if (!instar_) return by_food;
  return by_food + parameters_->at_instar[std::min(*instar_ + moults_ahead, instars - 1)];
}

// A cycle of few meals is like the one before.
void LevelFilter::feed(const MealGaps& meals) {
  if (!(meals.days > 0)) return;
  const double seen = std::log(meals.days / meals.gaps) - parameters_->meals.at(level_.mean);
  const double strength = documented_priors().meals.strength;
  scarcity_ = (meals.gaps * seen + strength * scarcity_) / (meals.gaps + strength);
}

void LevelFilter::keep_to_a_year(double spread, double loosened) {
  loosened_ = loosened;
  const double year = std::log(365.25) - off_the_line(0);
  const auto draw_near = [&](Level& level) {
    const double gain = level.variance / (level.variance + spread * spread);
    level.mean += gain * (year - level.mean);
    level.variance *= 1 - gain;
  };
  draw_near(level_);
  for (Held& held : std::span(held_).first(parts_)) draw_near(held.level);
}

LengthMixture LevelFilter::length_of(const Level& level, std::size_t moults) const {
  const double mean = level.mean + off_the_line(moults);
  const LevelParameters& p = *parameters_;
  double variance = level.variance;
  if (instar_) variance += p.at_instar_variance[std::min(*instar_ + moults, instars - 1)];
  // A scatter that is itself uncertain, log-normally, has this mean square.
  const double narrow = loosened_ * within() * std::exp(shift_.scatter_variance);
  const double wide = narrow * p.wide_factor;
  return {{{1 - p.wide_share, mean, std::sqrt(variance + narrow * narrow)},
           {p.wide_share, mean + p.wide_lean, std::sqrt(variance + wide * wide)}}};
}

double follow(LevelFilter& filter, const CycleHistory& history) {
  double log_likelihood = 0;
  for (const LoggedCycle& cycle : history.cycles) log_likelihood += filter.observe(cycle);
  return log_likelihood;
}

}  // namespace rackside
