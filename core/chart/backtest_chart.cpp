#include "core/chart/backtest_chart.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/chart/canvas.hpp"

namespace rackside {
namespace {

constexpr double sheet_width = 960;
constexpr double sheet_height = 340;
constexpr double small = 11;
constexpr double large = 14;

void frame(Canvas& canvas, const Box& box, const std::string& title) {
  canvas.text(box.left, box.top - 14, title, large);
  canvas.line(box.left, box.top + box.height, box.left + box.width, box.top + box.height,
              Ink::Axis);
}

void draw_errors(Canvas& canvas, const Box& box, const BacktestReport& report) {
  frame(canvas, box, "Mean error of the date (CRPS, days)");
  double most = 1e-9;
  for (const MomentScore& score : report.moments) most = std::max(most, score.crps);
  const double row =
      box.height / static_cast<double>(std::max<std::size_t>(1, report.moments.size()));
  for (std::size_t i = 0; i < report.moments.size(); ++i) {
    const MomentScore& score = report.moments[i];
    const double top = box.top + row * static_cast<double>(i);
    const double length = (box.width - 45) * score.crps / most;
    canvas.text(box.left, top + 14, score.name, small);
    canvas.rectangle({box.left, top + 20, length, row - 30}, i == 0 ? Ink::First : Ink::Others);
    canvas.text(box.left + length + 5, top + 20 + (row - 30) / 2 + 4,
                fmt::format("{:.1f}", score.crps), small);
  }
}

void draw_reliability(Canvas& canvas, const Box& box, const BacktestReport& report) {
  frame(canvas, box, "Premoult: said, and so it was");
  const auto x = [&](double share) { return box.left + box.width * share; };
  const auto y = [&](double share) { return box.top + box.height * (1 - share); };
  canvas.line(x(0), y(0), x(1), y(1), Ink::Faint, 2);
  canvas.line(x(0), y(0), x(0), y(1), Ink::Axis);
  for (const double tick : {0.0, 0.5, 1.0}) {
    canvas.text(x(tick), y(0) + 15, fmt::format("{:.0f} %", 100 * tick), small, Align::Middle);
    canvas.text(x(0) - 4, y(tick) + 4, fmt::format("{:.0f}", 100 * tick), small, Align::Right);
  }
  for (const ReliabilityRow& bin : report.reliability)
    if (bin.calls > 0)
      canvas.dot(x(bin.said), y(bin.happened),
                 2 + 6 * std::sqrt(static_cast<double>(bin.calls) /
                                   static_cast<double>(std::max<std::size_t>(1, report.calls))),
                 Ink::First);
}

void draw_places(Canvas& canvas, const Box& box, const BacktestReport& report) {
  frame(canvas, box, "Where dates fell in the forecast");
  const double most = std::max(0.2, *std::ranges::max_element(report.places));
  const double width = box.width / static_cast<double>(report.places.size());
  for (std::size_t i = 0; i < report.places.size(); ++i) {
    const double height = box.height * report.places[i] / most;
    canvas.rectangle({box.left + width * static_cast<double>(i) + 1, box.top + box.height - height,
                      width - 2, height},
                     Ink::First);
  }
  const double even = box.top + box.height * (1 - 0.1 / most);
  canvas.line(box.left, even, box.left + box.width, even, Ink::Axis, 1.5);
  canvas.text(box.left, box.top + box.height + 15, "earlier", small);
  canvas.text(box.left + box.width, box.top + box.height + 15, "later", small, Align::Right);
}

}  // namespace

Result<void> draw_backtest(const BacktestReport& report, const std::filesystem::path& file) {
  auto canvas = Canvas::open(file, sheet_width, sheet_height);
  if (!canvas) return tl::unexpected(canvas.error());
  draw_errors(*canvas, {20, 50, 270, 220}, report);
  draw_reliability(*canvas, {350, 50, 240, 220}, report);
  draw_places(*canvas, {660, 50, 270, 220}, report);
  canvas->text(20, 322,
               fmt::format("{} forecasts of {} moults on {} days", report.forecasts, report.moults,
                           report.days),
               small);
  return canvas->finish();
}

}  // namespace rackside
