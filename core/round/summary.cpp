#include "core/round/summary.hpp"

#include <algorithm>

namespace rackside {
namespace {

// The last outcome of each animal, an undone tap not counted.
std::map<AnimalId, Outcome> outcomes(const std::vector<Event>& since) {
  std::map<AnimalId, Outcome> last;
  for (const Event& event : since) {
    if (!event.animal) continue;
    if (const auto* offered = std::get_if<Offered>(&event.details))
      last[*event.animal] = offered->outcome;
  }
  return last;
}

std::optional<LookAgain> reason_for(const TubTask& tub, const std::map<AnimalId, Outcome>& last,
                                    const std::set<AnimalId>& left) {
  if (tub.instruction.urgent) return LookAgain::Urgent;
  if (tub.instruction.health_flag) return LookAgain::HealthFlag;
  if (const auto found = last.find(tub.animal); found != last.end()) {
    if (found->second == Outcome::LeftOvernight) return LookAgain::PreyLeft;
    if (found->second == Outcome::Refused) return LookAgain::Refused;
  }
  if (left.contains(tub.animal)) return LookAgain::NotReached;
  return std::nullopt;
}

}  // namespace

std::string_view look_again_word(LookAgain reason) {
  switch (reason) {
    case LookAgain::Urgent: return "urgent";
    case LookAgain::HealthFlag: return "look closer";
    case LookAgain::PreyLeft: return "prey left";
    case LookAgain::Refused: return "refused";
    case LookAgain::NotReached: return "not reached";
  }
  return {};
}

Summary summarise(const DayPlan& plan, const DayPlan& now, std::vector<Event> since, When started) {
  since = standing(std::move(since));
  const auto last = outcomes(since);
  const Progress walked = progress(plan, since, started);
  Summary summary{.due = walked.due(), .done = walked.done};
  for (const auto& [animal, outcome] : last) {
    if (outcome == Outcome::Took) ++summary.fed;
    if (outcome == Outcome::Refused) ++summary.refused;
    if (outcome == Outcome::LeftOvernight) ++summary.prey_left;
  }
  const auto left_over = walked.left();
  const std::set<AnimalId> left(left_over.begin(), left_over.end());
  for (const auto* list : {&now.due, &now.leave_alone, &now.wait})
    for (const TubTask& tub : *list)
      if (const auto reason = reason_for(tub, last, left))
        summary.look_again.push_back({*reason, tub});
  std::ranges::sort(summary.look_again, [](const SummaryLine& a, const SummaryLine& b) {
    return a.reason != b.reason ? a.reason < b.reason : comes_before(a.tub, b.tub);
  });
  return summary;
}

}  // namespace rackside
