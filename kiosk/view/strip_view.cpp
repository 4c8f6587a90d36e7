#include "kiosk/view/strip_view.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/words/dates.hpp"
#include "core/words/measures.hpp"

namespace rackside::kiosk {
namespace {

constexpr double least_warmth_span = 8;  // degrees C from the bottom to the top of the hairline
constexpr std::chrono::hours half_a_day{12};

bool is_moult(const Event& event) {
  return std::holds_alternative<Moulted>(event.details) ||
         std::holds_alternative<ShedFound>(event.details);
}

std::optional<StripMark> strip_mark(const Event& event, Instant begin) {
  const double day = days_between(begin, event.when.moment.utc);
  const Mark mark = mark_of(event.details);
  if (const auto* offered = std::get_if<Offered>(&event.details))
    return StripMark{day, mark, offered->outcome == Outcome::Took, {}};
  if (const auto* looked = std::get_if<Looked>(&event.details))
    return looked->signs.empty() ? std::nullopt : std::optional(StripMark{day, mark, true, {}});
  return std::nullopt;
}

// Indices of the events at which a cycle begins: the arrival and every moult.
std::vector<std::size_t> beginnings(const std::vector<Event>& events) {
  std::vector<std::size_t> list;
  for (std::size_t i = 0; i < events.size(); ++i)
    if (is_moult(events[i]) || std::holds_alternative<AnimalAdded>(events[i].details))
      list.push_back(i);
  return list;
}

StripCycle cycle_between(const std::vector<Event>& events, std::size_t from, std::size_t to) {
  const Instant begin = events[from].when.moment.utc;
  StripCycle cycle{.length = days_between(begin, events[to].when.moment.utc)};
  for (std::size_t i = from; i < to; ++i)
    if (const auto mark = strip_mark(events[i], begin)) cycle.marks.push_back(*mark);
  return cycle;
}

double quantile(const Forecast& forecast, double probability) {
  const auto index = static_cast<std::size_t>(std::lround(probability * 20)) - 1;
  return forecast.next_moult[index];
}

// The mean over the days around each: the forecast reckons in steps, and an edge in the curve would
// say something that nobody knows.
std::vector<double> smoothed(const std::vector<double>& values, std::size_t reach) {
  std::vector<double> sums{0};
  for (const double value : values) sums.push_back(sums.back() + value);
  std::vector<double> result;
  for (std::size_t i = 0; i < values.size(); ++i) {
    const std::size_t from = i < reach ? 0 : i - reach;
    const std::size_t to = std::min(values.size(), i + reach + 1);
    result.push_back((sums[to] - sums[from]) / static_cast<double>(to - from));
  }
  return result;
}

StripDensity density_of(const MoultDensity& days, double today) {
  StripDensity result;
  // A sixth of the middle half on each side, twice: no wider than what the eye takes for one bump.
  const auto reach = static_cast<std::size_t>(1 + (days.half[1] - days.half[0]) / 6);
  result.density = smoothed(smoothed(days.a_day, reach), reach);
  for (std::size_t i = 0; i < days.a_day.size(); ++i)
    result.day.push_back(today + days.first_day + static_cast<double>(i) + 0.5);
  result.q05 = today + days.nine_tenths[0];
  result.q25 = today + days.half[0];
  result.median = today + days.median;
  result.q75 = today + days.half[1];
  result.q95 = today + days.nine_tenths[1];
  return result;
}

std::string range_words(const Forecast& forecast, const Moment& now, DateStyle dates) {
  const auto day_at = [&](double days) { return now.day() + std::chrono::days{std::lround(days)}; };
  const Day from = day_at(quantile(forecast, 0.25));
  const Day to = day_at(quantile(forecast, 0.75));
  if (to < now.day()) return "It has probably moulted already: look for a shed.";
  if (from <= now.day())
    return fmt::format("Moult most likely by {}.",
                       day_words(std::max(to, now.day()), now.day(), dates));
  return fmt::format("Moult most likely {} to {}.", day_words(from, now.day(), dates),
                     day_words(to, now.day(), dates));
}

std::vector<StripMark> marks_since(const std::vector<Event>& events, std::size_t from,
                                   const EventId* newest) {
  const Instant begin = events[from].when.moment.utc;
  std::vector<StripMark> marks;
  for (std::size_t i = from; i < events.size(); ++i)
    if (auto mark = strip_mark(events[i], begin)) {
      if (newest != nullptr && events[i].id == *newest) mark->landed = events[i].id;
      marks.push_back(*mark);
    }
  return marks;
}

// A look at which nothing was seen ends a run.
std::vector<StripRun> runs_since(const std::vector<Event>& events, std::size_t from) {
  const Instant begin = events[from].when.moment.utc;
  std::vector<StripRun> runs;
  bool seen_before = false;
  for (std::size_t i = from; i < events.size(); ++i) {
    const auto* looked = std::get_if<Looked>(&events[i].details);
    if (looked == nullptr) continue;
    const bool seen = !looked->signs.empty();
    const double day = days_between(begin, events[i].when.moment.utc);
    if (seen && seen_before)
      runs.back().to = day;
    else if (seen)
      runs.push_back({day, day});
    seen_before = seen;
  }
  std::erase_if(runs, [](const StripRun& run) { return run.to - run.from < 1; });
  return runs;
}

// One reading says how warm a day was, not how it went.
std::optional<StripWarmth> warmth_of(const std::vector<WarmDay>& days, Instant begin, Units units) {
  if (days.size() < 3) return std::nullopt;
  const auto [low, high] =
      std::ranges::minmax(days, {}, [](const WarmDay& day) { return day.mean.value; });
  // A room that keeps its warmth is to look level.
  const double span = std::max(least_warmth_span, high.mean.value - low.mean.value);
  const double middle = (high.mean.value + low.mean.value) / 2;
  StripWarmth warmth;
  for (const WarmDay& day : days) {
    warmth.day.push_back(std::max(0.0, days_between(begin, Instant{day.day} + half_a_day)));
    warmth.part.push_back(0.5 + (day.mean.value - middle) / span);
  }
  const std::string from = temperature_words(low.mean, units);
  const std::string to = temperature_words(high.mean, units);
  warmth.words =
      from == to ? "air " + to : fmt::format("air {} to {}", from.substr(0, from.find(' ')), to);
  return warmth;
}

}  // namespace

std::optional<StripView> view_strip(const StripFacts& facts) {
  const auto events = standing(facts.history);
  const auto begins = beginnings(events);
  if (begins.empty()) return std::nullopt;
  const Event& first = events[begins.back()];
  const Instant begin = first.when.moment.utc;
  StripView view;
  view.begins =
      fmt::format("{} {}", is_moult(first) ? "moult" : "came",
                  day_words(first.when.moment.day(), facts.now.day(), facts.wording.dates));
  view.today = std::max(0.0, days_between(begin, facts.now.utc));
  view.marks = marks_since(events, begins.back(), facts.newest);
  view.runs = runs_since(events, begins.back());
  for (std::size_t i = begins.size(); i-- > 1 && view.before.size() < 2;)
    if (is_moult(events[begins[i - 1]]))
      view.before.push_back(cycle_between(events, begins[i - 1], begins[i]));
  view.length = std::max(view.today * 1.1, 14.0);
  if (facts.forecast != nullptr && facts.forecast->moult_expected)
    view.words = range_words(*facts.forecast, facts.now, facts.wording.dates);
  if (facts.density != nullptr && !facts.density->a_day.empty()) {
    view.density = density_of(*facts.density, view.today);
    view.length = std::max(view.length, view.density->day.back() * 1.01);
  }
  for (const StripCycle& cycle : view.before) view.length = std::max(view.length, cycle.length);
  if (facts.warmth != nullptr)
    view.warmth = warmth_of(facts.warmth->at(facts.rack, first.when.moment.day()), begin,
                            facts.wording.units);
  return view;
}

std::optional<SmallStrip> small_strip(const AnimalState& animal, const Forecast* forecast,
                                      const Moment& now) {
  if (forecast == nullptr || !forecast->moult_expected) return std::nullopt;
  const Instant begin =
      animal.last_moult ? animal.last_moult->noticed.moment.utc : animal.added.moment.utc;
  const double today = std::max(0.0, days_between(begin, now.utc));
  const double length = std::max(today, today + quantile(*forecast, 0.95)) * 1.03 + 1;
  const auto part = [&](double probability) {
    return std::clamp((today + quantile(*forecast, probability)) / length, 0.0, 1.0);
  };
  return SmallStrip{today / length, part(0.05), part(0.25), part(0.75), part(0.95)};
}

}  // namespace rackside::kiosk
