#include "core/forecast/cycle_chain.hpp"

#include "core/forecast/normal.hpp"
#include "core/forecast/opening.hpp"

namespace rackside {
namespace {

class Laws {
 public:
  Laws(const FinishedCycle& cycle, const Habits& habits)
      : cycle_(cycle), habits_(habits), log_cycle_(std::log(cycle.ends - cycle.begins)) {}

  [[nodiscard]] Move between(double from, double to) const {
    const double hard_from = still_hard(habits_.hardening, log_cycle_, from - cycle_.begins);
    const double hard_to = still_hard(habits_.hardening, log_cycle_, to - cycle_.begins);
    const double begun = premoult_by(from);
    return {.leaves_hard = hard_from > 1e-9 ? 1 - hard_to / hard_from : 1,
            .enters_premoult = begun < 1 - 1e-9 ? (premoult_by(to) - begun) / (1 - begun) : 1,
            .change = change_in(habits_, to - from)};
  }
  [[nodiscard]] bool fresh(double day) const { return day - cycle_.begins < fresh_days; }

 private:
  [[nodiscard]] double premoult_by(double day) const {
    const double left = cycle_.ends - day;
    if (left <= 0) return 1;
    return normal_cdf((habits_.premoult.mean_for(log_cycle_) - std::log(left)) /
                      habits_.premoult.spread);
  }

  const FinishedCycle& cycle_;
  const Habits& habits_;
  double log_cycle_;
};

// By Appetite: hardening, feeding, fasting, premoult.
AppetiteChain::Step step_of(const Move& m, const Step& seen, bool fresh) {
  const double stays = 1 - m.enters_premoult;
  const Change& c = m.change;
  return {.moves = {{{stays * (1 - m.leaves_hard), stays * m.leaves_hard, 0, m.enters_premoult},
                     {0, stays * (1 - c.to_fast), stays * c.to_fast, m.enters_premoult},
                     {0, stays * c.to_feed, stays * (1 - c.to_feed), m.enters_premoult},
                     {0, 0, 0, 1}}},
          .seen = {seen.hardening, fresh ? seen.feeding_fresh : seen.feeding,
                   fresh ? seen.fasting_fresh : seen.fasting, seen.premoult}};
}

}  // namespace

CycleChain chain_of(const FinishedCycle& cycle, const Habits& habits, SignSet mute) {
  const Laws laws(cycle, habits);
  CycleChain chain;
  std::vector<AppetiteChain::Step> steps;
  double before = cycle.begins;
  for (const Step& seen : steps_of(cycle.observations, habits, mute)) {
    chain.days.push_back(seen.day);
    chain.moves.push_back(laws.between(before, seen.day));
    steps.push_back(step_of(chain.moves.back(), seen, laws.fresh(seen.day)));
    before = seen.day;
  }
  // At the end of the cycle premoult has begun, whatever the phase at the last observation was.
  chain.pass = AppetiteChain::run({1, 0, 0, 0}, steps, {1, 1, 1, 1});
  return chain;
}

}  // namespace rackside
