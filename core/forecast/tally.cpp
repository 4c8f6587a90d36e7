#include "core/forecast/tally.hpp"

#include <algorithm>
#include <cmath>

#include "core/forecast/cycle_chain.hpp"
#include "core/forecast/normal.hpp"

namespace rackside {
namespace {

using Four = AppetiteChain::Phases;
constexpr std::size_t hard = 0, feed = 1, fast = 2, pre = 3;

class Tally {
 public:
  Tally(const FinishedCycle& cycle, const Habits& habits, SignSet mute)
      : cycle_(cycle),
        habits_(habits),
        mute_(mute),
        log_cycle_(std::log(cycle.ends - cycle.begins)),
        chain_(chain_of(cycle, habits, mute)) {}

  HabitCounts run() {
    count_observations();
    count_moves();
    return counts_;
  }

 private:
  [[nodiscard]] double day_before(std::size_t k) const {
    return k == 0 ? cycle_.begins : chain_.days[k - 1];
  }

  void count_observations() {
    LookBefore before;
    for (std::size_t k = 0; k < chain_.days.size(); ++k) {
      Four now = AppetiteChain::times(chain_.pass.predicted[k], chain_.pass.ahead[k]);
      AppetiteChain::normalise(now);
      const Observation& seen = cycle_.observations[k];
      if (seen.kind == Observation::Kind::Offer) {
        count_offer(seen, now);
      } else {
        count_look(seen, now, before);
        before.remember(seen);
      }
      const double days = std::min(60.0, chain_.days[k] - day_before(k));
      counts_.feeding_days += now[feed] * days;
      counts_.fasting_days += now[fast] * days;
    }
  }
  void count_offer(const Observation& offer, const Four& now) {
    const auto outcome = static_cast<std::size_t>(offer.outcome);
    for (std::size_t s = 0; s < appetites; ++s) {
      if (s == feed && offer.unsettled)
        counts_.unsettled[outcome] += now[s];
      else
        counts_.offer[s][outcome] += now[s];
    }
  }
  void count_look(const Observation& look, const Four& now, const LookBefore& before) {
    const bool fresh = look.day - cycle_.begins < fresh_days;
    const double open = now[feed] + now[fast];
    const Four by_phase{now[hard], fresh ? open : 0, fresh ? 0 : open, now[pre]};
    for (const Sign sign : all_signs) {
      if (!counts_in(sign, look.signs, mute_)) continue;
      const std::size_t again = before.reported(sign, look.day);
      const auto at = static_cast<std::size_t>(sign);
      for (std::size_t phase = 0; phase < sign_phases; ++phase) {
        counts_.looked[again][phase][at] += by_phase[phase];
        if (look.signs.has(sign)) counts_.seen[again][phase][at] += by_phase[phase];
      }
    }
  }

  void count_moves() {
    if (chain_.days.empty()) return;
    double entered = 0;
    for (std::size_t k = 0; k < chain_.days.size(); ++k) {
      const Four& from = chain_.pass.before[k];
      const Four& to = chain_.pass.predicted[k];
      const Four& ahead = chain_.pass.ahead[k];
      const Move& m = chain_.moves[k];
      const double total =
          to[0] * ahead[0] + to[1] * ahead[1] + to[2] * ahead[2] + to[3] * ahead[3];
      const double stays = (1 - m.enters_premoult) / total;
      const double enters = m.enters_premoult * (1 - from[pre]) * ahead[pre] / total;
      entered += enters;
      count_premoult(enters, day_before(k), chain_.days[k]);
      count_hardening(stays * from[hard] * m.leaves_hard * ahead[feed], day_before(k),
                      chain_.days[k]);
      counts_.fasts += stays * from[feed] * m.change.to_fast * ahead[fast];
      counts_.fasts_ended += stays * from[fast] * m.change.to_feed * ahead[feed];
    }
    count_premoult(std::max(0.0, 1 - entered), chain_.days.back(), cycle_.ends);
  }
  // Premoult began between two days: its length is interval-censored.
  void count_premoult(double weight, double from, double to) {
    if (weight < 1e-4) return;
    const double longest = std::log(cycle_.ends - from);
    const double least = to < cycle_.ends ? std::log(cycle_.ends - to) : std::log(0.5);
    const Truncated length =
        truncate_normal(habits_.premoult.mean_for(log_cycle_), habits_.premoult.spread,
                        std::min(least, longest - 1e-6), longest);
    const double x = log_cycle_ - habits_.premoult.log_reference;
    counts_.premoults += weight;
    counts_.x += weight * x;
    counts_.xx += weight * x * x;
    counts_.y += weight * length.mean;
    counts_.xy += weight * x * length.mean;
    counts_.yy += weight * (length.mean * length.mean + length.variance);
  }
  void count_hardening(double weight, double from, double to) {
    if (weight < 1e-4 || to <= cycle_.begins) return;
    const double least = from > cycle_.begins ? std::log(from - cycle_.begins) : std::log(0.5);
    const double longest = std::log(to - cycle_.begins);
    const double mean = habits_.hardening.mean_for(log_cycle_);
    const Truncated length =
        truncate_normal(mean, habits_.hardening.spread, std::min(least, longest - 1e-6), longest);
    counts_.hardenings += weight;
    counts_.hardening_y += weight * (length.mean - mean);
  }

  const FinishedCycle& cycle_;
  const Habits& habits_;
  SignSet mute_;
  double log_cycle_;
  CycleChain chain_;
  HabitCounts counts_;
};

}  // namespace

HabitCounts tally(const FinishedCycle& cycle, const Habits& habits, SignSet mute) {
  return Tally(cycle, habits, mute).run();
}

}  // namespace rackside
