#pragma once
// How long this animal's cycles are. The level is the mean of the logarithm of the cycle that runs;
// it starts where the species and the stage put it, drifts upwards from moult to moult, wanders a
// little, and every cycle on record tells of it. A scalar Kalman filter with censored observations
// and a mixture of ways in which an interval can come about (MODEL.md, "Lengths").

#include <array>
#include <optional>
#include <span>
#include <vector>

#include "core/event/details.hpp"
#include "core/forecast/priors.hpp"

namespace rackside {

inline constexpr std::size_t instars = 16;  // later ones are as the last

/// The log of the days from meal to meal that is usual at a level.
struct UsualMeals {
  double log_gap = 0, with_level = 0;

  [[nodiscard]] double at(double level) const { return log_gap + with_level * level; }
};

struct LevelParameters {
  std::array<double, stages> start{};  // mean log length of the first cycle here, by stage
  double start_spread = 0;             // between animals of one species and stage
  double known_start_spread = 0;       // the same where the instar is known
  double per_instar = 0;
  double drift = 0;        // of growing animals, a moult
  double adult_drift = 0;  // of those that came as adults
  double pull = 0;         // the drift falls by this much for each unit of level above pull_at
  double pull_at = 0;
  double wander = 0;
  double within = 0;        // of growing animals
  double adult_within = 0;  // of those that came as adults
  double wide_share = 0, wide_factor = 1;
  double wide_lean = 0;  // of the log: what is out of line is rather too long than too short
  double unseen_share = 0;
  double food = 0;  // what scarcity of meals adds to the log length, a unit of its own logarithm
  UsualMeals meals;
  std::array<double, stages> instar_reference{};
  /// What a straight drift misses at an instar that is known: some are longer than both neighbours.
  std::array<double, instars> at_instar{};
  std::array<double, instars> at_instar_variance{};  // for forecasts, not for the fit
};

/// How one species differs from the collection.
struct SpeciesShift {
  double level = 0, drift = 0;  // of growing animals
  double adult = 0;             // what is added to `level` for those that came as adults
  double level_variance = 0, drift_variance = 0, adult_variance = 0;
  double scatter_variance = 0;  // of the log of the scatter that lengths are believed to have
};

struct Level {
  double mean = 0;
  double variance = 0;
};

/// The days between meals that followed each other in one cycle.
struct MealGaps {
  double days = 0, gaps = 0;
};

/// One stretch between two moults on record, or less where an end is missing. Bounds are of the
/// logarithm of its length from the middle of the first moult's span; `noise` is the variance that
/// span adds, or a part of it where it is wide.
struct LoggedCycle {
  enum class Start : std::uint8_t { Moult, Arrival };

  double low = 0, high = 0, noise = 0;
  Start start = Start::Moult;
  bool running = false;    // no moult has ended it yet; only `low` is known
  double start_width = 0;  // days of the first moult's span, where that is wide; else 0
  bool wide_end = false;   // the span of the moult that ends it is wide
  MealGaps meals;
  double trace = 0;  // of a hidden moult, as core/forecast/traces.hpp has it
};

/// A span that is wide for the cycles beside it is cut into this many parts, each of which may hold
/// the moult: a moult late in its span makes one cycle longer and the next one shorter.
inline constexpr std::size_t span_parts = 4;

struct CycleHistory {
  Stage stage = Stage::Unknown;
  std::optional<int> instar;
  std::vector<LoggedCycle> cycles;
  MealGaps meals_since;  // in the cycle after them
};

/// One way in which the length of the cycle that runs may be distributed: log length normal.
struct LengthComponent {
  double weight = 0, mean = 0, deviation = 0;
};
using LengthMixture = std::array<LengthComponent, 2>;

/// One part of the last moult's span: how likely the moult was in it, and what then follows.
struct SpanPart {
  double weight = 0;
  LengthMixture length;
};

/// Which of LevelParameters::start an animal begins from.
[[nodiscard]] std::size_t start_index(Stage stage, std::optional<int> instar);

class LevelFilter {
 public:
  LevelFilter(const LevelParameters& parameters, const SpeciesShift& shift, Stage stage,
              std::optional<int> instar);

  /// Learns from `cycle` and moves on to the next one (unless it is running). Returns the log
  /// likelihood of what was seen.
  double observe(const LoggedCycle& cycle);

  /// Takes in how often the animal is fed in the cycle at hand. `observe` does so with its cycle.
  void feed(const MealGaps& meals);

  [[nodiscard]] const Level& level() const { return level_; }
  /// The chance that the cycle observed last hid a moult that nobody saw.
  [[nodiscard]] double hid_a_moult() const { return hid_a_moult_; }
  /// By how much the log of that cycle's length was off what had been expected, supposing that it
  /// hid none.
  [[nodiscard]] double rest() const { return rest_; }
  /// The instar it is in, where that is known: as it came, and one more for every moult since.
  [[nodiscard]] std::optional<std::size_t> instar() const { return instar_; }
  /// The mean of the log length of the cycle at hand.
  [[nodiscard]] double expected() const { return level_.mean + off_the_line(0); }
  /// How long the cycle at hand is, from moult to moult, whether or not either was seen.
  [[nodiscard]] LengthMixture length() const { return length_of(level_, 0); }
  /// The same given each part of the span in which the cycle at hand began.
  [[nodiscard]] std::array<SpanPart, span_parts> length_by_part() const;
  /// The same for the one after it.
  [[nodiscard]] LengthMixture next_length() const { return length_of(advanced(level_), 1); }

 private:
  [[nodiscard]] double within() const {
    return adult_ ? parameters_->adult_within : parameters_->within;
  }
  [[nodiscard]] double log_mean_scatter() const;  // of the length, against exp(level)
  [[nodiscard]] double drift_at(double level) const;
  [[nodiscard]] Level advanced(const Level& level) const;
  [[nodiscard]] LengthMixture length_of(const Level& level, std::size_t moults) const;
  // What the instar and the meals add to the line of lengths.
  [[nodiscard]] double off_the_line(std::size_t moults_ahead) const;

  // A way in which the interval between two moults on record can come about.
  struct Way {
    double weight = 0;
    double offset = 0;    // of the log of the interval against the level
    double variance = 0;  // around it
    int unseen = 0;       // moults inside it that nobody saw
  };
  void list_ways();

  // What is believed if the last moult was in one part of its span; all of it where there is one.
  struct Held {
    double weight = 0;
    Level level;
  };
  // Sums over everything that may have been, by the part of the span that ends the cycle.
  struct Sums {
    double total = 0, hidden = 0, mean = 0, square = 0;
    double rest = 0;  // of lengths against what was expected, where nothing was hidden
    void add(double weight, const Level& level);
    [[nodiscard]] Level level() const;
  };
  void arrive();
  void divide(std::size_t parts);
  void weigh(Sums& sums, const Held& from, const LoggedCycle& cycle, double low, double high) const;
  double settle(std::span<const Sums> ends);

  const LevelParameters* parameters_;
  std::array<Way, 4> ways_;
  SpeciesShift shift_;
  bool adult_;
  std::optional<std::size_t> instar_;
  Level level_;  // of all parts together
  std::array<Held, span_parts> held_;
  double scarcity_ = 0;    // of meals: the log of their gap against what is usual
  std::size_t parts_ = 1;  // of held_ that are in use
  double hid_a_moult_ = 0;
  double rest_ = 0;
};

/// All of `history` after one another. Returns its log likelihood.
double follow(LevelFilter& filter, const CycleHistory& history);

}  // namespace rackside
