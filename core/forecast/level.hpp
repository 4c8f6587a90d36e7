#pragma once
// How long this animal's cycles are. The level is the mean of the logarithm of the cycle that runs;
// it starts where the species and the stage put it, drifts upwards from moult to moult, wanders a
// little, and every cycle on record tells of it. A scalar Kalman filter with censored observations
// and a mixture of ways in which an interval can come about (MODEL.md, "Lengths").

#include <array>
#include <optional>
#include <span>

#include "core/forecast/level_parameters.hpp"
#include "core/forecast/logged_cycle.hpp"

namespace rackside {

struct Level {
  double mean = 0;
  double variance = 0;
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

  /// Takes in that the animal keeps to a season: its cycles are a year long, give or take `spread`
  /// on the log, and scatter `loosened` times as far as they would without.
  void keep_to_a_year(double spread, double loosened);

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
  double loosened_ = 1;
};

/// All of `history` after one another. Returns its log likelihood.
double follow(LevelFilter& filter, const CycleHistory& history);

}  // namespace rackside
