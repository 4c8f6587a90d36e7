// How a level filter learns from one cycle.

#include <algorithm>
#include <cmath>

#include "core/forecast/level.hpp"
#include "core/forecast/normal.hpp"

namespace rackside {
namespace {

constexpr double shortest = 0.5;  // days, of a cycle

// Where the middle of a part lies in a span of this width, from the span's own middle.
double place_of_part(std::size_t part, std::size_t parts, double width) {
  return ((static_cast<double>(part) + 0.5) / static_cast<double>(parts) - 0.5) * width;
}

}  // namespace

void LevelFilter::Sums::add(double weight, const Level& level) {
  total += weight;
  mean += weight * level.mean;
  square += weight * (level.variance + level.mean * level.mean);
}

Level LevelFilter::Sums::level() const {
  const double middle = mean / total;
  return {middle, std::max(1e-6, square / total - middle * middle)};
}

// Of a cycle that began before the animal came only the rest r is known, with density S(r) /
// E[length] (renewal theory: the arrival falls anywhere). S(r) is a censored observation; dividing
// by exp(level) shifts a normal level down by its variance.
void LevelFilter::arrive() {
  level_.mean -= level_.variance;
  held_[0] = {1, level_};
  parts_ = 1;
}

void LevelFilter::divide(std::size_t parts) {
  if (parts == parts_) return;
  held_.fill({1.0 / static_cast<double>(parts), level_});
  parts_ = parts;
}

void LevelFilter::weigh(Sums& sums, const Held& from, const LoggedCycle& cycle, double low,
                        double high) const {
  const double here = off_the_line(0);
  const double trace = cycle.trace == 0 ? 1 : std::exp(cycle.trace);
  for (const Way& way : ways_) {
    const double predicted = from.level.variance + way.variance + cycle.noise;
    const Truncated seen =
        truncate_normal(from.level.mean + here + way.offset, std::sqrt(predicted), low, high);
    const double gain = from.level.variance / predicted;
    Level after{from.level.mean + gain * (seen.mean - here - way.offset - from.level.mean),
                from.level.variance * (1 - gain) + gain * gain * seen.variance};
    for (int moults = 0; moults < way.unseen + (cycle.running ? 0 : 1); ++moults)
      after = advanced(after);
    const double weight = from.weight * way.weight * seen.mass * (way.unseen > 0 ? trace : 1);
    sums.add(weight, after);
    if (way.unseen > 0)
      sums.hidden += weight;
    else
      sums.rest += weight * (seen.mean - here - from.level.mean);
  }
}

double LevelFilter::settle(std::span<const Sums> ends) {
  Sums all;
  for (std::size_t end = 0; end < ends.size(); ++end) {
    held_[end] = {ends[end].total, ends[end].level()};
    all.add(ends[end].total, held_[end].level);
    all.hidden += ends[end].hidden;
    all.rest += ends[end].rest;
  }
  for (Held& held : std::span(held_).first(ends.size())) held.weight /= all.total;
  parts_ = ends.size();
  level_ = all.level();
  hid_a_moult_ = all.hidden / all.total;
  rest_ = all.total > all.hidden ? all.rest / (all.total - all.hidden) : 0;
  return std::log(all.total);
}

double LevelFilter::observe(const LoggedCycle& cycle) {
  feed(cycle.meals);
  const bool arrival = cycle.start == LoggedCycle::Start::Arrival;
  double log_likelihood = 0;
  if (arrival) {
    // The scatter's own share of E[length] matters: without it a fit gains without end by
    // scattering.
    log_likelihood = level_.variance / 2 - expected() - log_mean_scatter();
    arrive();
  }
  divide(cycle.start_width > 0 ? span_parts : 1);
  const bool open = cycle.running || arrival;
  const std::size_t parts = cycle.wide_end && !open ? span_parts : 1;
  std::array<Sums, span_parts> ends;
  if (parts_ == 1 && parts == 1) {
    weigh(ends[0], held_[0], cycle, cycle.low, open ? HUGE_VAL : cycle.high);
  } else {
    const double first = std::exp(cycle.low);
    const double part = (std::exp(cycle.high) - first) / static_cast<double>(parts);
    for (std::size_t end = 0; end < parts; ++end)
      for (std::size_t start = 0; start < parts_; ++start) {
        const double from = first + part * static_cast<double>(end) -
                            place_of_part(start, parts_, cycle.start_width);
        weigh(ends[end], held_[start], cycle, std::log(std::max(shortest, from)),
              open ? HUGE_VAL : std::log(std::max(1.5 * shortest, from + part)));
      }
  }
  const std::size_t moults_ahead = cycle.running ? 0 : 1;
  log_likelihood += settle(std::span(ends).first(parts));
  if (instar_) *instar_ += moults_ahead + (moults_ahead > 0 && hid_a_moult_ > 0.5 ? 1 : 0);
  return log_likelihood;
}

std::array<SpanPart, span_parts> LevelFilter::length_by_part() const {
  std::array<SpanPart, span_parts> parts;
  for (std::size_t i = 0; i < span_parts; ++i) {
    const Held& held = held_[parts_ == 1 ? 0 : i];
    parts[i] = {parts_ == 1 ? 1.0 / span_parts : held.weight, length_of(held.level, 0)};
  }
  return parts;
}

}  // namespace rackside
