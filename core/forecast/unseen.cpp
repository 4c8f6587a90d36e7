#include "core/forecast/unseen.hpp"

#include <algorithm>
#include <cmath>

#include "core/forecast/normal_points.hpp"

namespace rackside {
namespace {

constexpr double negligible = 1e-7;  // probability of a moult before anything was observed after it

const NormalPoints<7> premoult_points(2.4);
const NormalPoints<15> cycle_points(2.8);

}  // namespace

UnseenMoults::UnseenMoults(const Character& character, const Observed& observed, const Cells& cells,
                           double as_of)
    : character_(character),
      observed_(observed),
      cells_(cells),
      as_of_(as_of),
      scale_(cells.past),
      after_(cells.past) {
  if (cells.past == 0) return;
  list_candidates();
  const double all = observed.feeding(observed.steps());
  for (std::size_t cell = cells.past; cell-- > 0;) {
    const double moult = cells.cells[cell].middle();
    first_ = observed.steps_before(moult);
    scale_[cell] = all - observed.feeding(first_);
    if (cells.cells[cell].probability * observed.unnoticed(moult) > negligible)
      after_[cell] = weigh(cell);
  }
}

void UnseenMoults::list_candidates() {
  const LengthLaw& premoult = character_.habits.premoult;
  for (const LengthComponent& c : character_.next_length)
    for (std::size_t k = 0; k < cycle_points.z.size(); ++k) {
      Candidate candidate{c.weight * cycle_points.weight[k],
                          std::exp(c.mean + c.deviation * cycle_points.z[k])};
      const double median = premoult.mean_for(std::log(candidate.days));
      for (std::size_t p = 0; p < premoult_points.z.size(); ++p)
        candidate.premoult[p] = std::exp(median + premoult.spread * premoult_points.z[p]);
      candidates_.push_back(candidate);
    }
}

After UnseenMoults::weigh(std::size_t cell) {
  second_.run(observed_.steps_from(first_),
              {cells_.cells[cell].middle(), false, character_.next_length[0].mean}, as_of_,
              character_.habits);
  const double until_now = std::exp(second_.log_likelihood().back() - scale_[cell]);
  After after;
  for (const Candidate& candidate : candidates_) add(after, cell, candidate, until_now);
  return after;
}

void UnseenMoults::add(After& after, std::size_t cell, const Candidate& candidate,
                       double until_now) const {
  const double moult = cells_.cells[cell].middle();
  const double next = character_.clock.after(moult, candidate.days);
  const std::size_t last = std::max(first_, observed_.steps_before(next));
  double open = 0;  // weight of premoult not having begun
  for (std::size_t p = 0; p < premoult_points.z.size(); ++p) {
    const double weight = candidate.weight * premoult_points.weight[p];
    const double begins = next - std::min(longest_premoult * (next - moult), candidate.premoult[p]);
    if (begins >= as_of_) {
      open += weight;
      continue;
    }
    const std::size_t turn = std::max(first_, observed_.steps_before(begins));
    const double seen = second_.log_likelihood()[turn - first_] + observed_.premoult(last) -
                        observed_.premoult(turn) - scale_[cell];
    if (next < as_of_) {
      add_third(after, cell, next, weight * observed_.unnoticed(next), seen);
      continue;
    }
    const double likelihood = weight * std::exp(seen);
    after.likelihood += likelihood;
    after.premoult += likelihood;
  }
  after.likelihood += open * until_now;
  after.hardening += open * until_now * second_.hardening();
  after.fasting += open * until_now * second_.fasting();
}

void UnseenMoults::add_third(After& after, std::size_t cell, double moult, double weight,
                             double log_seen) const {
  const auto past = std::span(cells_.cells).subspan(cell + 1, cells_.past - cell - 1);
  const auto holds = std::ranges::lower_bound(past, moult, {}, &MoultCell::to);
  if (holds == past.end()) return;
  const std::size_t third = cell + 1 + static_cast<std::size_t>(holds - past.begin());
  const double factor = weight * std::exp(log_seen + scale_[third]);
  after.likelihood += factor * after_[third].likelihood;
  after.premoult += factor * after_[third].premoult;
  after.hardening += factor * after_[third].hardening;
  after.fasting += factor * after_[third].fasting;
}

}  // namespace rackside
