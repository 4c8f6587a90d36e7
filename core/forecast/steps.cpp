#include "core/forecast/steps.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace rackside {
namespace {

constexpr double stale_look_days = 45;  // a sign reported longer ago says nothing about today

void offer_likelihoods(Step& step, const Observation& offer, const Habits& habits) {
  const auto outcome = static_cast<std::size_t>(offer.outcome);
  const auto of = [&](Appetite appetite) {
    return habits.offer[static_cast<std::size_t>(appetite)][outcome];
  };
  step.hardening = of(Appetite::Hardening);
  step.feeding = offer.unsettled ? habits.unsettled[outcome] : of(Appetite::Feeding);
  step.fasting = of(Appetite::Fasting);
  step.premoult = of(Appetite::Premoult);
  step.feeding_fresh = step.feeding;
  step.fasting_fresh = step.fasting;
}

double look_likelihood(const Observation& look, const Habits& habits, SignSet mute,
                       const LookBefore& before, SignPhase phase) {
  double likelihood = 1;
  for (const Sign sign : all_signs) {
    if (!counts_in(sign, look.signs, mute)) continue;
    const double chance = habits.sign[before.reported(
        sign, look.day)][static_cast<std::size_t>(phase)][static_cast<std::size_t>(sign)];
    likelihood *= look.signs.has(sign) ? chance : 1 - chance;
  }
  return likelihood;
}

void look_likelihoods(Step& step, const Observation& look, const Habits& habits, SignSet mute,
                      const LookBefore& before) {
  const auto in = [&](SignPhase phase) {
    return look_likelihood(look, habits, mute, before, phase);
  };
  step.hardening = in(SignPhase::Hardening);
  step.feeding = step.fasting = in(SignPhase::Feeding);
  step.feeding_fresh = step.fasting_fresh = in(SignPhase::Fresh);
  step.premoult = in(SignPhase::Premoult);
  step.on_its_back = look.signs.has(Sign::OnItsBack);
}

}  // namespace

Change change_in(const Habits& habits, double days) {
  const double both = habits.fast_start + habits.fast_end;
  const double moved = (1 - std::exp(-both * days)) / both;
  return {habits.fast_start * moved, habits.fast_end * moved};
}

bool counts_in(Sign sign, SignSet look, SignSet mute) {
  if (mute.has(sign)) return false;
  if (sign != Sign::Sluggish) return true;
  constexpr std::array others{Sign::DarkAbdomen, Sign::PlumpAbdomen, Sign::SealedIn};
  return std::ranges::any_of(others, [&](Sign s) { return look.has(s) && !mute.has(s); });
}

std::size_t LookBefore::reported(Sign sign, double now) const {
  return now - day_ <= stale_look_days && signs_.has(sign) ? 1 : 0;
}

void LookBefore::remember(const Observation& look) {
  signs_ = look.signs;
  day_ = look.day;
}

std::vector<Step> steps_of(std::span<const Observation> observations, const Habits& habits,
                           SignSet mute) {
  std::vector<Step> steps;
  steps.reserve(observations.size());
  LookBefore before;
  double last_gap = -1;
  Change change;
  for (const Observation& observation : observations) {
    Step step{.day = observation.day};
    if (observation.kind == Observation::Kind::Offer) {
      offer_likelihoods(step, observation, habits);
    } else {
      look_likelihoods(step, observation, habits, mute, before);
      before.remember(observation);
    }
    const double gap = steps.empty() ? 0 : observation.day - steps.back().day;
    if (gap != last_gap) change = change_in(habits, gap);
    last_gap = gap;
    step.to_fast = change.to_fast;
    step.to_feed = change.to_feed;
    steps.push_back(step);
  }
  return steps;
}

}  // namespace rackside
