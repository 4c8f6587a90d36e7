#include "core/forecast/cells.hpp"

#include <algorithm>
#include <cmath>

#include "core/forecast/normal.hpp"

namespace rackside {
namespace {

// No moult is looked for sooner after another: days, or a share of a very short cycle.
constexpr double shortest_cycle = 6;
constexpr double shortest_share = 0.35;
constexpr double widest_past = 14;  // days, of a cell; wider where nothing is on record for years
constexpr double most_past = 45;    // cells, about

double mixture_cdf(const LengthMixture& mixture, double noise, double length) {
  if (length <= 0) return 0;
  const double log_length = std::log(length);
  double sum = 0;
  for (const LengthComponent& c : mixture)
    sum +=
        c.weight * normal_cdf((log_length - c.mean) / std::sqrt(c.deviation * c.deviation + noise));
  return sum;
}

double mixture_mean(const LengthMixture& mixture) {
  double sum = 0;
  for (const LengthComponent& c : mixture)
    sum += c.weight * std::exp(c.mean + c.deviation * c.deviation / 2);
  return sum;
}

// Beyond it nothing worth counting is left: far in the tail of lengths, and as long again after an
// animal that is overdue already.
double horizon(const Character& character, const RunningCycle& cycle, double as_of) {
  const LengthComponent& wide = character.lengths.all[1];
  const double tail = std::exp(wide.mean + 3.2 * wide.deviation);
  return std::max(character.clock.after(cycle.start(), tail),
                  as_of + (as_of - cycle.start()) / 2 + 60);
}

void add_past(Cells& cells, double first, double as_of) {
  const double widest = std::max(widest_past, (as_of - first) / most_past);
  double until = as_of;
  for (double width = 1; until > first; width = std::min(widest, width * 1.1)) {
    cells.cells.push_back({std::max(first, until - width), until});
    until -= width;
  }
  std::ranges::reverse(cells.cells);
  cells.past = cells.cells.size();
}

void add_future(Cells& cells, double from, double as_of, double until) {
  for (double width = 1; from<until; width *= from - as_of> 45 ? 1.06 : 1) {
    cells.cells.push_back({from, from + width});
    from += width;
  }
}

// One place at which the cycle may have begun, and the law of its length from there.
struct Beginning {
  double day = 0, weight = 1, noise = 0;  // noise: the variance that the place itself adds
  LengthMixture length;

  [[nodiscard]] double below(double elapsed) const { return mixture_cdf(length, noise, elapsed); }
};

// The length is known by the part of the span; within a part the beginnings stand closer, so that
// the forecast has no waves that are only those of the parts.
constexpr std::size_t places_in_part = 3;

std::vector<Beginning> beginnings(const Lengths& lengths, const RunningCycle& cycle) {
  const double span = cycle.start_latest - cycle.start_earliest;
  const auto& by_part = lengths.by_part;
  const std::size_t places = by_part.size() * places_in_part;
  const double width =
      span / static_cast<double>(std::max<std::size_t>(1, places)) / std::exp(lengths.all[0].mean);
  const double noise = width * width / 12;  // delta method
  if (by_part.empty() || cycle.from_arrival) return {{cycle.start(), 1, noise, lengths.all}};
  std::vector<Beginning> list;
  for (std::size_t i = 0; i < places; ++i) {
    const SpanPart& part = by_part[i / places_in_part];
    list.push_back(
        {cycle.start_earliest + span * (static_cast<double>(i) + 0.5) / static_cast<double>(places),
         part.weight / places_in_part, noise, part.length});
  }
  return list;
}

void weigh_by(const Lengths& lengths, Cells& cells, const GrowthClock& clock,
              const RunningCycle& cycle) {
  const double mean = mixture_mean(lengths.all);
  for (const Beginning& beginning : beginnings(lengths, cycle)) {
    double from = clock.between(beginning.day, cells.cells.front().from);
    double below = beginning.below(from);
    for (MoultCell& cell : cells.cells) {
      const double to = clock.between(beginning.day, cell.to);
      const double until = beginning.below(to);
      // From an arrival on, the rest r of a cycle has density S(r) / E[length].
      cell.probability += cycle.from_arrival ? (1 - (below + until) / 2) * (to - from) / mean
                                             : beginning.weight * (until - below);
      from = to;
      below = until;
    }
  }
}

// What the cells weigh if the animal keeps to the season: for each peak it may have, lengths
// tilted towards it.
void tilt(Cells& cells, const Season& season) {
  constexpr double negligible = 1e-3;
  const YearBell bell(season.sharpness);
  std::vector<double> factors(cells.cells.size());
  for (std::size_t peak = 0; peak < season_peaks; ++peak) {
    if (season.peaks[peak] < negligible) continue;
    double all = 1e-9;
    for (const MoultCell& cell : cells.cells)
      all += cell.probability * bell.at(year_part(cell.middle()), peak);
    for (std::size_t i = 0; i < factors.size(); ++i)
      factors[i] += season.peaks[peak] * bell.at(year_part(cells.cells[i].middle()), peak) / all;
  }
  for (std::size_t i = 0; i < factors.size(); ++i) cells.cells[i].probability *= factors[i];
}

void weigh(Cells& cells, const Character& character, const RunningCycle& cycle) {
  const Season& season = character.season;
  Cells in_season = cells;
  weigh_by(character.lengths, cells, character.clock, cycle);
  if (season.kept == 0) return;
  weigh_by(character.in_season, in_season, character.clock, cycle);
  tilt(in_season, season);
  for (std::size_t i = 0; i < cells.cells.size(); ++i)
    cells.cells[i].probability =
        std::lerp(cells.cells[i].probability, in_season.cells[i].probability, season.kept);
}

}  // namespace

Cells lay_cells(const Character& character, const RunningCycle& cycle, double as_of) {
  Cells cells;
  const double shortest =
      std::min(shortest_cycle, shortest_share * std::exp(character.lengths.all[0].mean));
  const double first =
      cycle.from_arrival ? cycle.start() : std::max(cycle.start_latest, cycle.start() + shortest);
  add_past(cells, first, as_of);
  add_future(cells, std::max(first, as_of), as_of, horizon(character, cycle, as_of));
  weigh(cells, character, cycle);
  return cells;
}

}  // namespace rackside
