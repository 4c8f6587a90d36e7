#include "core/forecast/opening.hpp"

#include <algorithm>
#include <cmath>

#include "core/forecast/normal.hpp"

namespace rackside {
namespace {

// Where an animal of which nothing is known arrives in its cycle, premoult aside.
constexpr double hard_at_arrival = 0.04;

}  // namespace

double still_hard(const LengthLaw& hardening, double log_cycle, double age) {
  if (age <= 0) return 1;
  return normal_cdf((hardening.mean_for(log_cycle) - std::log(age)) / hardening.spread);
}

void Opening::soften(double age, const Habits& habits, double log_cycle) {
  if (hardening_ < 1e-9) return;
  const double hard = still_hard(habits.hardening, log_cycle, age);
  const double stays = hard_before_ > 1e-12 ? std::min(1.0, hard / hard_before_) : 0;
  feeding_ += hardening_ * (1 - stays);
  hardening_ *= stays;
  hard_before_ = hard;
}

void Opening::drift(const Change& change) {
  const double starts = feeding_ * change.to_fast;
  const double ends = fasting_ * change.to_feed;
  feeding_ += ends - starts;
  fasting_ += starts - ends;
}

void Opening::run(std::span<const Step> steps, const CycleStart& start, double until,
                  const Habits& habits) {
  hardening_ = start.arrival ? hard_at_arrival : 1;
  feeding_ = 1 - hardening_;
  fasting_ = 0;
  hard_before_ = 1;
  if (start.arrival) {
    fasting_ = feeding_ * habits.fast_start / (habits.fast_start + habits.fast_end);
    feeding_ -= fasting_;
  }
  log_likelihood_.clear();
  log_likelihood_.push_back(0);
  double total = 0;
  double before = start.day;
  for (std::size_t k = 0; k < steps.size(); ++k) {
    const Step& step = steps[k];
    soften(step.day - start.day, habits, start.log_length);
    drift(k == 0 ? change_in(habits, std::max(0.0, step.day - start.day))
                 : Change{step.to_fast, step.to_feed});
    const bool fresh = !start.arrival && step.day - start.day < fresh_days;
    hardening_ *= step.hardening;
    feeding_ *= fresh ? step.feeding_fresh : step.feeding;
    fasting_ *= fresh ? step.fasting_fresh : step.fasting;
    const double norm = hardening_ + feeding_ + fasting_;
    hardening_ /= norm;
    feeding_ /= norm;
    fasting_ /= norm;
    total += std::log(norm);
    log_likelihood_.push_back(total);
    before = step.day;
  }
  soften(until - start.day, habits, start.log_length);
  drift(change_in(habits, std::max(0.0, until - before)));
}

}  // namespace rackside
