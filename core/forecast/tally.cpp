#include "core/forecast/tally.hpp"

#include <algorithm>
#include <cmath>

#include "core/forecast/normal.hpp"
#include "core/forecast/opening.hpp"

namespace rackside {
namespace {

using Four = std::array<double, appetites>;
constexpr std::size_t hard = 0, feed = 1, fast = 2, pre = 3;

// Chances to move between two observations.
struct Move {
  double leaves_hard = 0;
  double enters_premoult = 0;
  Change change;
};

class Pass {
 public:
  Pass(const FinishedCycle& cycle, const Habits& habits, SignSet mute)
      : cycle_(cycle),
        habits_(habits),
        mute_(mute),
        steps_(steps_of(cycle.observations, habits, mute)),
        log_cycle_(std::log(cycle.ends - cycle.begins)) {}

  HabitCounts run() {
    if (steps_.empty()) return counts_;
    forward();
    backward();
    count_observations();
    count_moves();
    return counts_;
  }

 private:
  [[nodiscard]] double began_by(double day) const {
    const double left = cycle_.ends - day;
    if (left <= 0) return 1;
    return normal_cdf((habits_.premoult.mean_for(log_cycle_) - std::log(left)) /
                      habits_.premoult.spread);
  }

  Move move_to(std::size_t k) const {
    const double from = k == 0 ? cycle_.begins : steps_[k - 1].day;
    const double to = steps_[k].day;
    const double hard_from = still_hard(habits_.hardening, log_cycle_, from - cycle_.begins);
    const double hard_to = still_hard(habits_.hardening, log_cycle_, to - cycle_.begins);
    const double begun = began_by(from);
    Move move;
    move.leaves_hard = hard_from > 1e-9 ? 1 - hard_to / hard_from : 1;
    move.enters_premoult = begun < 1 - 1e-9 ? (began_by(to) - begun) / (1 - begun) : 1;
    move.change =
        k == 0 ? change_in(habits_, to - from) : Change{steps_[k].to_fast, steps_[k].to_feed};
    return move;
  }

  [[nodiscard]] Four likelihoods(const Step& step) const {
    const bool fresh = step.day - cycle_.begins < fresh_days;
    return {step.hardening, fresh ? step.feeding_fresh : step.feeding,
            fresh ? step.fasting_fresh : step.fasting, step.premoult};
  }

  static Four moved(const Four& from, const Move& m) {
    Four to{};
    const double stays = 1 - m.enters_premoult;
    const double soft = from[hard] * m.leaves_hard;
    to[hard] = stays * from[hard] * (1 - m.leaves_hard);
    to[feed] = stays * (from[feed] * (1 - m.change.to_fast) + from[fast] * m.change.to_feed + soft);
    to[fast] = stays * (from[feed] * m.change.to_fast + from[fast] * (1 - m.change.to_feed));
    to[pre] = from[pre] + m.enters_premoult * (from[hard] + from[feed] + from[fast]);
    return to;
  }

  static double normalise(Four& values) {
    const double sum = values[0] + values[1] + values[2] + values[3];
    for (double& value : values) value /= sum;
    return sum;
  }

  void forward() {
    Four now{1, 0, 0, 0};
    for (std::size_t k = 0; k < steps_.size(); ++k) {
      moves_.push_back(move_to(k));
      before_.push_back(now);
      now = moved(now, moves_.back());
      const Four seen = likelihoods(steps_[k]);
      for (std::size_t s = 0; s < appetites; ++s) now[s] *= seen[s];
      normalise(now);
      forward_.push_back(now);
    }
  }

  // What comes after step k, had the phase been s there; each row scaled to sum 1.
  void backward() {
    const double all_begun = 1;  // at the end of the cycle premoult has begun
    backward_.assign(steps_.size(), {all_begun, all_begun, all_begun, all_begun});
    for (std::size_t k = steps_.size() - 1; k > 0; --k) {
      const Four ahead = ahead_of(k);
      const Move& m = moves_[k];
      const double stays = 1 - m.enters_premoult;
      const double turn = m.enters_premoult * ahead[pre];
      backward_[k - 1] = {
          stays * ((1 - m.leaves_hard) * ahead[hard] + m.leaves_hard * ahead[feed]) + turn,
          stays * ((1 - m.change.to_fast) * ahead[feed] + m.change.to_fast * ahead[fast]) + turn,
          stays * ((1 - m.change.to_feed) * ahead[fast] + m.change.to_feed * ahead[feed]) + turn,
          ahead[pre]};
      normalise(backward_[k - 1]);
    }
  }
  [[nodiscard]] Four ahead_of(std::size_t k) const {
    Four ahead = likelihoods(steps_[k]);
    for (std::size_t s = 0; s < appetites; ++s) ahead[s] *= backward_[k][s];
    return ahead;
  }

  void count_observations() {
    LookBefore before;
    for (std::size_t k = 0; k < steps_.size(); ++k) {
      Four now = forward_[k];
      for (std::size_t s = 0; s < appetites; ++s) now[s] *= backward_[k][s];
      normalise(now);
      const Observation& seen = cycle_.observations[k];
      if (seen.kind == Observation::Kind::Offer) {
        count_offer(seen, now);
      } else {
        count_look(seen, now, before);
        before.remember(seen);
      }
      const double days =
          std::min(60.0, steps_[k].day - (k == 0 ? cycle_.begins : steps_[k - 1].day));
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
    double entered = 0;
    for (std::size_t k = 0; k < steps_.size(); ++k) {
      const Four ahead = ahead_of(k);
      const Four& from = before_[k];
      const Move& m = moves_[k];
      const Four to = moved(from, m);
      const double total =
          to[0] * ahead[0] + to[1] * ahead[1] + to[2] * ahead[2] + to[3] * ahead[3];
      const double stays = 1 - m.enters_premoult;
      const double enters = m.enters_premoult * (1 - from[pre]) * ahead[pre] / total;
      entered += enters;
      const double begins = k == 0 ? cycle_.begins : steps_[k - 1].day;
      count_premoult(enters, begins, steps_[k].day);
      const double hardened = stays * from[hard] * m.leaves_hard * ahead[feed] / total;
      count_hardening(hardened, begins, steps_[k].day);
      counts_.fasts += stays * from[feed] * m.change.to_fast * ahead[fast] / total;
      counts_.fasts_ended += stays * from[fast] * m.change.to_feed * ahead[feed] / total;
    }
    count_premoult(std::max(0.0, 1 - entered), steps_.back().day, cycle_.ends);
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
  std::vector<Step> steps_;
  double log_cycle_;
  std::vector<Move> moves_;
  std::vector<Four> before_, forward_, backward_;
  HabitCounts counts_;
};

}  // namespace

HabitCounts tally(const FinishedCycle& cycle, const Habits& habits, SignSet mute) {
  return Pass(cycle, habits, mute).run();
}

}  // namespace rackside
