#pragma once
// How an animal behaves in each phase of its cycle, and how its keeper reports it: what it does
// with offers, which signs a look reports, how long hardening and premoult last.

#include <array>
#include <optional>

#include "core/event/signs.hpp"
#include "core/forecast/evidence.hpp"
#include "core/forecast/priors.hpp"
#include "core/forecast/traits.hpp"

namespace rackside {

/// What rules an animal's appetite. A fast is a spell of no appetite without a moult.
enum class Appetite : std::uint8_t { Hardening, Feeding, Fasting, Premoult };
inline constexpr std::size_t appetites = 4;

/// Phases in which a look can report signs. Fresh: the first `fresh_days` after a moult.
enum class SignPhase : std::uint8_t { Hardening, Fresh, Feeding, Premoult };
inline constexpr double fresh_days = 28;

using Shares = std::array<double, outcomes>;
using SignChances = std::array<double, all_signs.size()>;

/// A log-normal length whose median goes with the length of the cycle.
struct LengthLaw {
  double log_median = 0;  // for a cycle of `log_reference`
  double with_cycle = 0;
  double spread = 0;
  double log_reference = 0;

  [[nodiscard]] double mean_for(double log_cycle) const {
    return log_median + with_cycle * (log_cycle - log_reference);
  }
};

struct Habits {
  std::array<Shares, appetites> offer{};  // by Appetite
  Shares unsettled{};                     // feeding, but rehoused lately or cold
  // [reported by the look before][SignPhase][sign]: chance that a look reports it
  std::array<std::array<SignChances, sign_phases>, 2> sign{};
  double fast_start = 0, fast_end = 0;  // a day
  LengthLaw hardening, premoult;
  double last_hours_factor = 1;  // of "on its back" in the last two days of premoult
};

/// What was seen of habits, as expected numbers (the phases are never seen themselves).
struct HabitCounts {
  std::array<Shares, appetites> offer{};
  Shares unsettled{};
  std::array<std::array<SignChances, sign_phases>, 2> seen{}, looked{};
  double fasts = 0, fasts_ended = 0, feeding_days = 0, fasting_days = 0;
  // Sums for a straight line of log premoult length on log cycle length less its reference.
  double premoults = 0, x = 0, y = 0, xx = 0, xy = 0, yy = 0;
  double hardenings = 0, hardening_y = 0;  // sum of log length less the law's mean

  void add(const HabitCounts& other, double weight = 1);
};

/// The habits of priors.toml for an animal of these traits.
[[nodiscard]] Habits prior_habits(const Priors& priors, const Traits& traits, Stage stage);

enum class Pool : std::uint8_t { Collection, Species, Animal };

/// `parent` updated with what was seen of a collection, one species of it, or one animal of that.
[[nodiscard]] Habits updated(const Habits& parent, const HabitCounts& counts, const Priors& priors,
                             Pool level);

/// Signs that say nothing of this animal's moult: those its species cannot show, those that mean
/// something in growing animals only, and those of its health.
[[nodiscard]] SignSet mute_signs(const Traits& traits, Stage stage);

}  // namespace rackside
