#pragma once
// What keepers go by without a model: the next interval will be like ... give or take a quarter.

#include <array>
#include <map>
#include <span>
#include <string>
#include <string_view>

#include "core/forecast/evidence.hpp"
#include "core/forecast/forecast.hpp"

namespace rackside {

enum class Rule { LastInterval, OwnMean, SpeciesMean };
inline constexpr std::array all_rules{Rule::LastInterval, Rule::OwnMean, Rule::SpeciesMean};

[[nodiscard]] std::string_view rule_name(Rule rule);

/// Means of the intervals on record, for animals that have none of their own.
class IntervalMeans {
 public:
  explicit IntervalMeans(std::span<const Evidence> animals);

  [[nodiscard]] double of_species(const std::string& species) const;

 private:
  struct Sum {
    double days = 0;
    int intervals = 0;
  };
  std::map<std::string, Sum> species_;
  Sum all_;
};

/// Quantiles of the next moult in days after `now`: the interval that `rule` expects, counted from
/// the last moult on record (else from the arrival), with a spread of 25 %. A rule that has nothing
/// to go by falls back to the species' mean, and that to the collection's.
[[nodiscard]] std::array<double, moult_quantiles> by_rule(Rule rule, const Evidence& animal,
                                                          const IntervalMeans& means, double now);

}  // namespace rackside
