#pragma once
// The truth about one animal of the demo, which its keeper cannot see: where it stands in its moult
// cycle, and what it would do if something were offered or somebody looked.

#include <optional>
#include <random>

#include "core/event/signs.hpp"
#include "core/values/time.hpp"
#include "demo/collection/species.hpp"

namespace rackside::demo {

/// Every throw of the invention comes from one of these, so that a seed is a collection.
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : random_(seed) {}

  [[nodiscard]] bool chance(double p) { return std::bernoulli_distribution(p)(random_); }
  [[nodiscard]] int between(int low, int high) {
    return std::uniform_int_distribution(low, high)(random_);
  }
  /// Around 1, never negative.
  [[nodiscard]] double spread(double sigma) {
    return std::lognormal_distribution<>(0, sigma)(random_);
  }
  [[nodiscard]] double normal(double sigma) {
    return std::normal_distribution<>(0, sigma)(random_);
  }

 private:
  std::mt19937_64 random_;
};

class Life {
 public:
  /// It came on `acquired`, in the middle of a cycle.
  Life(const Species& species, int instar, Day acquired, Dice& dice);

  /// Lets its cycle move on to `day`; to be called for every day in turn.
  void live_on(Day day, Dice& dice);
  void shed_is_found() { shed_lies_ = false; }

  [[nodiscard]] bool takes(Day day, Dice& dice) const;
  [[nodiscard]] SignSet shows(Day day, Dice& dice) const;

  [[nodiscard]] int instar() const { return instar_; }
  [[nodiscard]] bool female() const { return female_; }
  [[nodiscard]] bool adult() const { return instar_ >= species_->adult_instar; }
  [[nodiscard]] bool mature_male() const { return adult() && !female_; }
  [[nodiscard]] std::optional<Day> male_since() const { return male_since_; }
  [[nodiscard]] bool shed_lies() const { return shed_lies_; }
  [[nodiscard]] Day moulted() const { return moulted_; }
  [[nodiscard]] Day premoult() const { return premoult_; }  // from when on it refuses
  [[nodiscard]] Day next_moult() const { return next_moult_; }
  [[nodiscard]] double leg_span() const;  // mm

 private:
  void begin_cycle(Day start, Dice& dice);

  const Species* species_;
  int instar_;
  bool female_ = true;
  bool shed_lies_ = false;
  Day moulted_, premoult_, next_moult_, fast_from_, fast_to_;
  std::optional<Day> male_since_;
};

}  // namespace rackside::demo
