#pragma once
// Invented worlds to try the forecast in: how moults come about there, what animals do and what
// their keeper writes down. None of them is the model's own; each is wrong for it in another way.

#include <array>
#include <optional>
#include <random>
#include <string>
#include <vector>

#include "core/event/details.hpp"

namespace rackside::tests {

using Dice = std::mt19937_64;

struct World {
  enum class Shape : std::uint8_t { Lognormal, Gamma, Weibull };
  enum class PremoultLaw : std::uint8_t { ShareOfCycle, OwnLength, Gamma };

  std::string name;

  // Lengths
  Shape shape = Shape::Lognormal;
  double within = 0.14;              // coefficient of variation of one animal's cycles
  double between = 0.12;             // sd of the log between animals of a species
  double between_species = 0.3;      // ... between species
  double lengthening = 0.13;         // of the log, a moult
  double lengthening_spread = 0.03;  // between species
  double ceiling = 1e9;              // days; longer cycles stop lengthening
  double outliers = 0.02;            // share of cycles that are 1.5 to 2.2 times as long
  double sling_days = 55, juvenile_days = 130, adult_days = 360;
  double season_of_adults = 0;  // 0: none, 1: adults moult at one season of the year only
  double season_of_growth = 0;  // amplitude of the yearly wave of growth
  bool readings = false;        // the keeper writes down the temperature

  // Phases
  PremoultLaw law = PremoultLaw::OwnLength;
  double premoult_share = 0.18;  // or median days for a cycle of 130 days, as 0.18 * 130
  double premoult_power = 0.6;   // how the log of its length goes with the log of the cycle's
  double premoult_spread = 0.3;
  double hardening_days = 7;

  // Behaviour
  double refuses_feeding = 0.08, refuses_premoult = 0.88, refuses_hardening = 0.9;
  double appetite_spread = 0.3;  // sd between animals, of the log odds of refusing while feeding
  double fasts_a_year = 0.25, fast_days = 35;
  double fasts_a_year_adult = 0.6, fast_days_adult = 70;

  // The keeper
  double offer_every = 7, offer_every_adult = 12;
  double look_every = 7;
  double signs_reported = 0.35;  // chance that a sign that is there is written down
  double false_signs = 0.02;
  bool signs_stay = false;   // once seen in a cycle's premoult, seen on and on
  double missed = 0.06;      // share of sheds that nobody ever finds
  double known_dates = 0.3;  // share of moults recorded with their day
  double pauses = 0;         // share of time in which nothing is offered for weeks
  double feeding_plans = 0;  // sd of the log of how often animals are fed, each by a plan or two
  double food = 0;           // how far growth goes with that: 0 not at all, 1 all of it
};

/// A cycle as it truly was. Days are wall days.
struct TrueCycle {
  double begins = 0, hard_until = 0, premoult = 0, ends = 0;
  std::vector<std::pair<double, double>> fasts;

  [[nodiscard]] bool in_premoult(double day) const { return day >= premoult && day < ends; }
  [[nodiscard]] bool fasting(double day) const;
};

/// What is fixed for one animal.
struct Nature {
  std::string species;
  Stage stage = Stage::Juvenile;
  double log_days = 0;          // median of its first cycle here
  double log_days_of_kind = 0;  // median of that among its kind
  double lengthening = 0;
  double refuses_feeding = 0;
  double season_peak = 0;  // day of the year, adults
  bool patch = true;
  std::array<double, 2> hunger{1, 1};  // days from offer to offer as a multiple of the usual
  double other_plan_from = 0;          // the day from which the second of them holds
};

[[nodiscard]] bool is_adult(const World& world, const Nature& nature, int moult);
/// How fast growth runs on a day: 1 on average.
[[nodiscard]] double growth_on(const World& world, double day);
/// The same for an animal that is fed by a plan of its own.
[[nodiscard]] double growth_on(const World& world, const Nature& nature, double day);
[[nodiscard]] double hunger_on(const Nature& nature, double day);
[[nodiscard]] double celsius_on(const World& world, double day);

/// The cycle after `moult` moults here, beginning on day `begins`.
[[nodiscard]] TrueCycle next_cycle(const World& world, const Nature& nature, int moult,
                                   double begins, Dice& dice);

/// How much was grown in a cycle, in days of usual growth.
[[nodiscard]] double growth_during(const World& world, const Nature& nature,
                                   const TrueCycle& cycle);
/// The density of that among the cycles of this nature. Not of adults in a season.
[[nodiscard]] double density_of(const World& world, const Nature& nature, int moult, double grown);

/// The chance that an offer is refused on a day of this cycle.
[[nodiscard]] double refusal_chance(const World& world, const Nature& nature,
                                    const TrueCycle& cycle, double day);
/// The chance that a look reports the sign.
[[nodiscard]] double sign_chance(const World& world, const Nature& nature, const TrueCycle& cycle,
                                 double day, Sign sign);

}  // namespace rackside::tests
