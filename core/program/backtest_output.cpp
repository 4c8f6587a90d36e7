#include "core/program/backtest_output.hpp"

#include <fmt/format.h>

#include "core/program/wording.hpp"

namespace rackside::program {
namespace {

std::string counted(std::size_t count, std::string_view what) {
  return program::counted(static_cast<std::int64_t>(count), what);
}

double percent(double share) { return 100 * share; }

std::string moments_text(const BacktestReport& report) {
  std::string text =
      "\nWhen the next moult was (days; smaller is better; ranges should hold "
      "50 % and 90 %)\n";
  text += fmt::format("  {:<32} {:>6} {:>6} {:>6}\n", "", "CRPS", "50 %", "90 %");
  for (const MomentScore& score : report.moments)
    text += fmt::format("  {:<32} {:>6.1f} {:>4.0f} % {:>4.0f} %\n", score.name, score.crps,
                        percent(score.in_half), percent(score.in_nine_tenths));
  text +=
      "\nWhere dates fell in this forecast, by tenths from earliest to latest (each should hold "
      "10 %)\n ";
  for (const double share : report.places) text += fmt::format(" {:>4.0f} %", percent(share));
  return text + "\n";
}

std::string calls_text(const BacktestReport& report) {
  if (report.calls == 0)
    return "\nWhether it was in premoult cannot be told from these records: that needs offers "
           "before a moult on record.\n";
  std::string text = fmt::format(
      "\nWhether it was in premoult, on {} that hindsight settles\n  Brier score {:.4f}; {:.4f} "
      "for always saying how often it was so\n  {:>10} {:>10} {:>8}\n",
      counted(report.calls, "call"), report.brier, report.brier_of_share, "said", "was so",
      "calls");
  for (const ReliabilityRow& row : report.reliability)
    if (row.calls > 0)
      text += fmt::format("  {:>8.0f} % {:>8.0f} % {:>8}\n", percent(row.said),
                          percent(row.happened), row.calls);
  return text;
}

std::string danger_text(const DangerScore& danger) {
  if (danger.dangerous == 0 || danger.ordinary == 0) return {};
  std::string text = fmt::format(
      "\nMeals within a week before or after a moult ({} of {}): how many are avoided, and how "
      "many "
      "other meals are withheld needlessly\n  {:<52} {:>7} {:>9}\n",
      danger.dangerous, danger.dangerous + danger.ordinary, "", "avoided", "withheld");
  const auto row = [&text](const std::string& way, double avoided, double withheld) {
    text +=
        fmt::format("  {:<52} {:>5.0f} % {:>7.0f} %\n", way, percent(avoided), percent(withheld));
  };
  row("after two refusals", danger.avoided_by_two_refusals, danger.withheld_by_two_refusals);
  row("by this forecast, withholding as often", danger.avoided_withholding_as_often,
      danger.withheld_by_two_refusals);
  row("by this forecast, avoiding as many", danger.avoided_by_two_refusals,
      danger.withheld_avoiding_as_many);
  row(fmt::format("by this forecast, where danger is above {:.0f} %", percent(danger.threshold)),
      danger.avoided_by_forecast, 0.05);
  return text;
}

}  // namespace

std::string backtest_text(const BacktestReport& report) {
  std::string text = fmt::format(
      "{} of {}, made on {}; {} still without an outcome.\n", counted(report.forecasts, "forecast"),
      counted(report.moults, "moult"), counted(report.days, "day"), report.without_outcome);
  for (const std::string& caution : report.cautions) text += caution + "\n";
  if (report.forecasts == 0) return text;
  return text + moments_text(report) + calls_text(report) + danger_text(report.danger);
}

}  // namespace rackside::program
