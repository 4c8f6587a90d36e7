#include "core/cover/moult_window.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/words/dates.hpp"
#include "core/words/sentences.hpp"

namespace rackside {
namespace {

constexpr std::size_t tenth = 1;  // of the quantiles 0.05, 0.10, ...
constexpr std::size_t nine_tenths = 17;

double level_of(std::size_t quantile) {
  return static_cast<double>(quantile + 1) / (moult_quantiles + 1);
}

// A forecast is told for the moment at which it was made; half a day more is the end of that day.
double end_of(Day day, Day today) { return static_cast<double>((day - today).count()) + 0.5; }

Day day_of(double quantile, Day today) {
  return today + std::chrono::days{static_cast<int>(std::lround(quantile))};
}

std::string span_words(const MoultWindow& window, DateStyle dates) {
  if (window.first == window.last) return fmt::format("on {}", long_day_words(window.first, dates));
  if (window.from_the_start && window.to_the_end) return "on any of these days";
  if (window.from_the_start)
    return fmt::format("any day until {}", long_day_words(window.last, dates));
  if (window.to_the_end) return fmt::format("from {} on", long_day_words(window.first, dates));
  return fmt::format("between {}", two_days_words(window.first, window.last, dates));
}

}  // namespace

double moult_before(const Forecast& forecast, double days) {
  const auto& q = forecast.next_moult;
  if (days <= q.front()) return days < q.front() ? 0 : level_of(0);
  for (std::size_t i = 1; i < q.size(); ++i)
    if (days < q[i]) {
      const double part = (days - q[i - 1]) / (q[i] - q[i - 1]);
      return level_of(i - 1) + part * (level_of(i) - level_of(i - 1));
    }
  return level_of(q.size() - 1);
}

std::optional<MoultWindow> moult_window(const Forecast& forecast, Day today, Day from, Day to,
                                        double tell_above) {
  if (!forecast.moult_expected) return std::nullopt;
  const double before = moult_before(forecast, end_of(from - std::chrono::days{1}, today));
  MoultWindow window{.probability = moult_before(forecast, end_of(to, today)) - before};
  if (window.probability <= tell_above) return std::nullopt;
  const Day earliest = day_of(forecast.next_moult[tenth], today);
  const Day latest = day_of(forecast.next_moult[nine_tenths], today);
  window.from_the_start = earliest <= from;
  window.to_the_end = latest >= to;
  window.first = std::clamp(earliest, from, to);
  window.last = std::clamp(latest, from, to);
  return window;
}

std::string window_sentence(const MoultWindow& window, DateStyle dates) {
  return fmt::format("May be found on its back {}: leave it, nothing is wrong ({} likely).",
                     span_words(window, dates), in_ten(window.probability));
}

}  // namespace rackside
