#pragma once
// What to carry before setting out.

#include <string>
#include <vector>

#include "core/round/day_plan.hpp"

namespace rackside {

/// Prey of one kind and size for one round.
struct PreyNeeded {
  std::string kind;
  std::optional<Millimetres> size;
  int planned = 0;              // if every tub took everything
  double expected_refused = 0;  // of these; prey refused at one tub goes on to the next
  int bring = 0;                // what is expected to be taken and a margin, at most `planned`

  bool operator==(const PreyNeeded&) const = default;
};

struct Preparation {
  std::vector<PreyNeeded> prey;       // by kind, then size
  std::vector<std::string> carry;     // "Water and a mister: 5 tubs"
  std::vector<std::string> cautions;  // "Venom of medical importance: 2 tubs. Long forceps."

  bool operator==(const Preparation&) const = default;
};

/// `margin` in standard deviations of the number taken, as the rule of that name.
[[nodiscard]] Preparation prepare(const DayPlan& plan, const Collection& collection, double margin);

/// "Bring 11 crickets of about 8 mm: 14 planned, about 4 likely to be refused, 1 for safety."
[[nodiscard]] std::string format_prey_needed(const PreyNeeded& prey, Units units = {});

}  // namespace rackside
