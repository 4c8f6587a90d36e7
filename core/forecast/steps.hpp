#pragma once
// Observations turned into how likely each was in each phase: what the passes over a cycle work on.

#include <span>
#include <vector>

#include "core/forecast/habits.hpp"

namespace rackside {

/// One observation. Each member is the likelihood of what was seen, had the animal been in that
/// phase; `fresh` variants apply in the first weeks after a moult.
struct Step {
  double day = 0;
  double hardening = 1;
  double feeding = 1, feeding_fresh = 1;
  double fasting = 1, fasting_fresh = 1;
  double premoult = 1;
  double to_fast = 0, to_feed = 0;  // chance to change since the step before
  bool on_its_back = false;
};

/// Chances of a change of appetite in `days`, from feeding to fasting and back: a two-state Markov
/// chain in continuous time.
struct Change {
  double to_fast = 0, to_feed = 0;
};
[[nodiscard]] Change change_in(const Habits& habits, double days);

[[nodiscard]] std::vector<Step> steps_of(std::span<const Observation> observations,
                                         const Habits& habits, SignSet mute);

/// Whether this look says something about `sign`. Sluggishness counts only together with another
/// sign of premoult; alone it points to the animal's health.
[[nodiscard]] bool counts_in(Sign sign, SignSet look, SignSet mute);

/// Which signs the look before this one reported, for `observations[0..]` in turn.
class LookBefore {
 public:
  /// 1 where the last look (not too long ago) reported it, else 0.
  [[nodiscard]] std::size_t reported(Sign sign, double now) const;
  void remember(const Observation& look);

 private:
  SignSet signs_;
  double day_ = -1e9;
};

}  // namespace rackside
