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
  const LengthComponent& wide = character.length[1];
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

void weigh_by_length(Cells& cells, const Character& character, const RunningCycle& cycle) {
  const double width =
      (cycle.start_latest - cycle.start_earliest) / std::exp(character.length[0].mean);
  const double noise = width * width / 12;  // what the uncertain start adds (delta method)
  const double mean = mixture_mean(character.length);
  const auto elapsed = [&](double day) { return character.clock.between(cycle.start(), day); };
  double from = elapsed(cells.cells.front().from);
  double below = mixture_cdf(character.length, noise, from);
  for (MoultCell& cell : cells.cells) {
    const double to = elapsed(cell.to);
    const double until = mixture_cdf(character.length, noise, to);
    // From an arrival on, the rest r of a cycle has density S(r) / E[length].
    cell.probability =
        cycle.from_arrival ? (1 - (below + until) / 2) * (to - from) / mean : until - below;
    cell.probability *= season_tilt(character.season, cell.middle());
    from = to;
    below = until;
  }
}

}  // namespace

Cells lay_cells(const Character& character, const RunningCycle& cycle, double as_of) {
  Cells cells;
  const double shortest =
      std::min(shortest_cycle, shortest_share * std::exp(character.length[0].mean));
  const double first =
      cycle.from_arrival ? cycle.start() : std::max(cycle.start_latest, cycle.start() + shortest);
  add_past(cells, first, as_of);
  add_future(cells, std::max(first, as_of), as_of, horizon(character, cycle, as_of));
  weigh_by_length(cells, character, cycle);
  return cells;
}

}  // namespace rackside
