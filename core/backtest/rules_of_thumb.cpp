#include "core/backtest/rules_of_thumb.hpp"

#include <boost/math/distributions/normal.hpp>

namespace rackside {
namespace {

constexpr double spread = 0.25;      // of the interval
constexpr double no_interval = 150;  // days, where the whole collection has none on record

std::vector<double> intervals_of(const Evidence& animal) {
  std::vector<double> intervals;
  for (std::size_t i = 1; i < animal.moults.size(); ++i)
    intervals.push_back(animal.moults[i].middle() - animal.moults[i - 1].middle());
  return intervals;
}

double expected(Rule rule, const Evidence& animal, const IntervalMeans& means) {
  const std::vector<double> own = intervals_of(animal);
  if (own.empty() || rule == Rule::SpeciesMean) return means.of_species(animal.species);
  if (rule == Rule::LastInterval) return own.back();
  double sum = 0;
  for (const double days : own) sum += days;
  return sum / static_cast<double>(own.size());
}

}  // namespace

std::string_view rule_name(Rule rule) {
  switch (rule) {
    case Rule::LastInterval: return "the last interval again";
    case Rule::OwnMean: return "the mean of its own intervals";
    case Rule::SpeciesMean: return "the mean of its species";
  }
  return "";
}

IntervalMeans::IntervalMeans(std::span<const Evidence> animals) {
  for (const Evidence& animal : animals)
    for (const double days : intervals_of(animal)) {
      for (Sum* sum : {&all_, &species_[animal.species]}) {
        sum->days += days;
        ++sum->intervals;
      }
    }
}

double IntervalMeans::of_species(const std::string& species) const {
  const auto found = species_.find(species);
  if (found != species_.end()) return found->second.days / found->second.intervals;
  return all_.intervals > 0 ? all_.days / all_.intervals : no_interval;
}

std::array<double, moult_quantiles> by_rule(Rule rule, const Evidence& animal,
                                            const IntervalMeans& means, double now) {
  const double interval = expected(rule, animal, means);
  const double from = animal.moults.empty() ? animal.arrived : animal.moults.back().middle();
  const boost::math::normal when(from + interval - now, std::max(1.0, spread * interval));
  std::array<double, moult_quantiles> quantiles{};
  for (std::size_t i = 0; i < moult_quantiles; ++i)
    quantiles[i] = boost::math::quantile(when, static_cast<double>(i + 1) / (moult_quantiles + 1));
  return quantiles;
}

}  // namespace rackside
