#pragma once
// The log replayed: what would have been forecast on past days from what was known then, against
// what turned out, beside the rules of thumb.

#include <array>
#include <functional>
#include <string>
#include <vector>

#include "core/backtest/rules_of_thumb.hpp"
#include "core/backtest/scores.hpp"
#include "core/forecast/evidence.hpp"

namespace rackside {

/// How one way of forecasting did on the same days as the others.
struct MomentScore {
  std::string name;
  double crps = 0;  // mean, days
  double in_half = 0, in_nine_tenths = 0;
};

/// Of the meals on record, which would have been withheld.
struct DangerScore {
  std::size_t dangerous = 0, ordinary = 0;  // meals in the danger window of a moult, and others
  double avoided_by_forecast = 0;  // share of the dangerous ones, at 5 % of ordinary ones withheld
  double threshold = 0;            // of the chance of danger, that does it
  double avoided_by_two_refusals = 0;
  double withheld_by_two_refusals = 0;  // share of the ordinary ones
  // The two side by side: the forecast held to the rule's needless share, and to what it avoids.
  double avoided_withholding_as_often = 0;
  double withheld_avoiding_as_many = 0;
};

struct BacktestReport {
  std::size_t days = 0, forecasts = 0, without_outcome = 0, moults = 0;
  std::vector<MomentScore> moments;  // this forecast, then the rules of thumb
  std::array<double, 10> places{};   // share of outcomes by tenth of the forecast (PIT)
  std::size_t calls = 0;
  double brier = 0, brier_of_share = 0;  // of the calls, and of always saying how often it was so
  std::array<ReliabilityRow, 10> reliability{};
  DangerScore danger;
  std::vector<std::string> cautions;  // why it may be too early to judge
};

struct BacktestPlan {
  Day from, to;
  int every_days = 7;
};

/// The evidence as it stood at the end of a day.
using EvidenceAt = std::function<Result<std::vector<Evidence>>(Day)>;

/// A plan whose days are not so many that a large collection would take long.
[[nodiscard]] BacktestPlan plan_backtest(Day from, Day to);

/// `known_now` is the evidence of today, for what turned out. Errors: those of `evidence_at`.
[[nodiscard]] Result<BacktestReport> backtest(const BacktestPlan& plan,
                                              const EvidenceAt& evidence_at,
                                              const std::vector<Evidence>& known_now);

}  // namespace rackside
