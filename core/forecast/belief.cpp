#include "core/forecast/belief.hpp"

#include <algorithm>
#include <cmath>

#include "core/forecast/normal_points.hpp"
#include "core/forecast/observed.hpp"
#include "core/forecast/unseen.hpp"

namespace rackside {
namespace {

// Fewer leave waves in the forecast: a day on which a sign was seen shows once for every length.
constexpr std::size_t premoult_lengths = 41;
const NormalPoints<premoult_lengths> premoult_points(3.2);

class Enumeration {
 public:
  Enumeration(const Character& character, const RunningCycle& cycle, double as_of)
      : character_(character),
        cycle_(cycle),
        as_of_(as_of),
        observed_(character, cycle, as_of),
        cells_(lay_cells(character, cycle, as_of)),
        unseen_(character, observed_, cells_, as_of) {
    for (std::size_t k = 0; k < premoult_points.z.size(); ++k)
      stretch_[k] = std::exp(character.habits.premoult.spread * premoult_points.z[k]);
  }

  Belief run() {
    const double peak = highest();
    for (std::size_t turn = 0; turn <= observed_.steps(); ++turn)
      until_now_.push_back(std::exp(observed_.feeding(turn) - observed_.premoult(turn) +
                                    observed_.premoult(observed_.steps()) - peak));
    Belief belief;
    belief.cells = cells_.cells;
    double total = 0, unseen = 0;
    for (std::size_t i = 0; i < belief.cells.size(); ++i) {
      const double weight = i < cells_.past ? weigh_past(i, peak, belief) : weigh_ahead(i, belief);
      belief.cells[i].probability = weight;
      total += weight;
      if (i < cells_.past) unseen += weight;
    }
    for (MoultCell& cell : belief.cells) cell.probability /= total;
    for (double Belief::*part : {&Belief::p_premoult, &Belief::p_hardening, &Belief::p_fasting})
      belief.*part = std::clamp(belief.*part / total, 0.0, 1.0);
    belief.p_moulted_unseen = std::clamp(unseen / total, 0.0, 1.0);
    return belief;
  }

 private:
  // The day on which premoult began, were the moult in this cell, for the k-th length of premoult.
  struct Turn {
    double length, median;
  };
  [[nodiscard]] Turn turn_of(double moult) const {
    double length = moult - cycle_.start();
    if (cycle_.from_arrival) length = std::max(length, std::exp(character_.lengths.all[0].mean));
    return {length, std::exp(character_.habits.premoult.mean_for(std::log(length)))};
  }
  [[nodiscard]] double begins(double moult, const Turn& turn, std::size_t k) const {
    return moult - std::min(longest_premoult * turn.length, turn.median * stretch_[k]);
  }

  // The largest log likelihood anything can reach, for the scale.
  [[nodiscard]] double highest() const {
    double peak = -HUGE_VAL;
    double best_turn = -HUGE_VAL;  // of feeding(turn) - premoult(turn) so far
    std::size_t turn = 0;
    for (std::size_t i = 0; i <= cells_.past; ++i) {
      const bool past = i < cells_.past;
      const std::size_t last =
          past ? observed_.steps_before(cells_.cells[i].middle()) : observed_.steps();
      for (; turn <= last; ++turn)
        best_turn = std::max(best_turn, observed_.feeding(turn) - observed_.premoult(turn));
      const double after =
          past ? std::log(unseen_.after(i).likelihood + 1e-300) + unseen_.scale(i) : 0;
      peak = std::max(peak, best_turn + observed_.premoult(last) + after);
    }
    return peak;
  }

  double weigh_ahead(std::size_t index, Belief& belief) const {
    const MoultCell& cell = cells_.cells[index];
    const double moult = cell.middle();
    const Turn turn = turn_of(moult);
    double premoult = 0, open = 0;
    for (std::size_t k = 0; k < premoult_points.z.size(); ++k) {
      const double day = begins(moult, turn, k);
      if (day > as_of_)
        open += premoult_points.weight[k] * until_now_.back();
      else
        premoult += premoult_points.weight[k] * until_now_[observed_.steps_before(day)];
    }
    const double prior = cell.probability * std::exp(observed_.on_its_back(cell));
    belief.p_premoult += prior * premoult;
    belief.p_hardening += prior * open * observed_.opening().hardening();
    belief.p_fasting += prior * open * observed_.opening().fasting();
    return prior * (premoult + open);
  }

  double weigh_past(std::size_t index, double peak, Belief& belief) const {
    const MoultCell& cell = cells_.cells[index];
    if (!(cell.probability > 1e-12)) return 0;
    const double moult = cell.middle();
    const Turn turn = turn_of(moult);
    const std::size_t last = observed_.steps_before(moult);
    const double base =
        observed_.premoult(last) + observed_.on_its_back(cell) + unseen_.scale(index) - peak;
    double sum = 0;
    double likelihood = 0;
    std::size_t before = SIZE_MAX;  // of that likelihood; most lengths have it in common
    for (std::size_t k = 0; k < premoult_points.z.size(); ++k) {
      const std::size_t at = std::min(last, observed_.steps_before(begins(moult, turn, k)));
      if (at != before)
        likelihood = std::exp(observed_.feeding(at) - observed_.premoult(at) + base);
      before = at;
      sum += premoult_points.weight[k] * likelihood;
    }
    sum *= cell.probability * observed_.unnoticed(moult);
    const After& after = unseen_.after(index);
    belief.p_premoult += sum * after.premoult;
    belief.p_hardening += sum * after.hardening;
    belief.p_fasting += sum * after.fasting;
    return sum * after.likelihood;
  }

  const Character& character_;
  const RunningCycle& cycle_;
  double as_of_;
  Observed observed_;
  Cells cells_;
  UnseenMoults unseen_;
  std::array<double, premoult_lengths>
      stretch_{};                  // factor of each length of premoult to its median
  std::vector<double> until_now_;  // likelihood of all steps, premoult beginning before the k-th
};

Lengths lengths_of(const LevelFilter& filter, bool wide_span) {
  Lengths lengths{filter.length(), {}};
  if (!wide_span) return lengths;
  const auto parts = filter.length_by_part();
  lengths.by_part.assign(parts.begin(), parts.end());
  return lengths;
}

}  // namespace

Character fed(Character character, const MealGaps& meals) {
  if (!character.unfed) return character;
  LevelFilter filter = *character.unfed;
  filter.feed(meals);
  character.lengths = lengths_of(filter, character.wide_span);
  if (character.season.kept > 0)
    character.in_season =
        lengths_of(in_season(filter, character.season.loosened), character.wide_span);
  character.next_length = filter.next_length();
  return character;
}

Belief believe(const Character& character, const RunningCycle& cycle, double as_of) {
  return Enumeration(character, cycle, as_of).run();
}

double quantile(const Belief& belief, double p) {
  double below = 0;
  for (const MoultCell& cell : belief.cells) {
    if (below + cell.probability >= p && cell.probability > 0) {
      const double part = std::clamp((p - below) / cell.probability, 0.0, 1.0);
      return cell.from + (cell.to - cell.from) * part;
    }
    below += cell.probability;
  }
  return belief.cells.back().to;
}

}  // namespace rackside
