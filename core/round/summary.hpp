#pragma once
// What a round has brought, and what needs another look.

#include <string>
#include <vector>

#include "core/round/round.hpp"

namespace rackside {

/// Why a tub stands in the summary.
enum class LookAgain { Urgent, HealthFlag, PreyLeft, Refused, NotReached };

/// "urgent", "look closer", "prey left", "refused", "not reached".
[[nodiscard]] std::string_view look_again_word(LookAgain reason);

struct SummaryLine {
  LookAgain reason;
  TubTask tub;  // with the instruction that holds now
  bool operator==(const SummaryLine&) const = default;
};

struct Summary {
  int due = 0;
  int done = 0;
  int fed = 0;
  int refused = 0;
  int prey_left = 0;                    // due to be taken out next morning
  std::vector<SummaryLine> look_again;  // each animal once, the weightiest reason; urgent first,
                                        // then in walking order
  bool operator==(const Summary&) const = default;
};

/// `plan` is the plan at the start, `now` the plan as things stand, `since` what was written since.
[[nodiscard]] Summary summarise(const DayPlan& plan, const DayPlan& now, std::vector<Event> since,
                                When started);

}  // namespace rackside
