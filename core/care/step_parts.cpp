#include "core/care/steps.hpp"

namespace rackside {

void add_reasons(std::vector<std::string>& why, const Findings& f, std::size_t most) {
  if (!f.forecast) return;
  for (const Reason& reason : f.forecast->why)
    if (reason.weight > 0 && why.size() < most) why.push_back(f.reason_line(reason));
}

bool mist_now(const Findings& f) {
  const bool very_soft = f.days_since_moult && *f.days_since_moult < f.rules.shed_rests_for;
  return (f.water_due || f.dry_before_moult) && !very_soft;
}

Instruction mist_only(std::vector<std::string> why, std::optional<Day> next) {
  return Instruction{.task = Task::MistAndCheckWater,
                     .urgency = Urgency::Due,
                     .sentence = "Mist and check the water. Offer nothing.",
                     .why = std::move(why),
                     .next_due = next};
}

}  // namespace rackside
