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
  return fmt::format(
      "\nMeals within a week before or after a moult ({} of {})\n"
      "  withholding where danger is above {:.0f} % avoids {:.0f} % of them, at {:.0f} % of "
      "ordinary meals withheld\n"
      "  withholding after two refusals avoids {:.0f} % of them, at {:.0f} % of ordinary meals "
      "withheld\n",
      danger.dangerous, danger.dangerous + danger.ordinary, percent(danger.threshold),
      percent(danger.avoided_by_forecast), 5.0, percent(danger.avoided_by_two_refusals),
      percent(danger.withheld_by_two_refusals));
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
