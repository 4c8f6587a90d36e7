#pragma once
// What may have followed a moult that nobody saw: another cycle, perhaps another unseen moult.

#include "core/forecast/cells.hpp"
#include "core/forecast/observed.hpp"

namespace rackside {

/// Given a moult in one past cell: the likelihood of all observations after it, and the parts of it
/// in which the animal is now in each phase. All are on the scale exp(UnseenMoults::scale(cell)).
struct After {
  double likelihood = 0;
  double premoult = 0;
  double hardening = 0;
  double fasting = 0;
};

/// Filled from the latest past cell to the earliest, so that what follows one can hold another.
class UnseenMoults {
 public:
  UnseenMoults(const Character& character, const Observed& observed, const Cells& cells,
               double as_of);

  [[nodiscard]] const After& after(std::size_t cell) const { return after_[cell]; }
  /// Log likelihood of the steps after a moult in this cell had it not been: keeps exponents near
  /// 0.
  [[nodiscard]] double scale(std::size_t cell) const { return scale_[cell]; }

 private:
  // One length of the cycle after the unseen moult, with the lengths of premoult that go with it.
  struct Candidate {
    double weight = 0, days = 0;
    std::array<double, 7> premoult{};
  };

  void list_candidates();
  [[nodiscard]] After weigh(std::size_t cell);
  void add(After& after, std::size_t cell, const Candidate& candidate, double until_now) const;
  void add_third(After& after, std::size_t cell, double moult, double weight,
                 double log_seen) const;

  const Character& character_;
  const Observed& observed_;
  const Cells& cells_;
  double as_of_;
  std::vector<Candidate> candidates_;
  Opening second_;
  std::size_t first_ = 0;  // step after the moult at hand
  std::vector<double> scale_;
  std::vector<After> after_;
};

}  // namespace rackside
