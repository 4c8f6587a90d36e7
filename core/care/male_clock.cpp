#include <fmt/format.h>

#include <cmath>

#include "core/care/instruction.hpp"

namespace rackside {
namespace {

constexpr double days_in_a_month = 365.25 / 12.0;

}  // namespace

std::optional<MaleClock> male_clock(const AnimalState& animal, const CareRules& rules, Day today) {
  if (animal.stage != Stage::MatureMale) return std::nullopt;
  const bool seen = animal.last_moult.has_value();
  const Day since = seen              ? animal.last_moult->noticed.moment.day()
                    : animal.acquired ? *animal.acquired
                                      : animal.added.moment.day();
  MaleClock clock{.months = static_cast<double>((today - since).count()) / days_in_a_month,
                  .at_least = !seen,
                  .sentence = {}};
  clock.sentence =
      fmt::format("Mature for {}{:.0f} months; {:g} to {:g} are usual, as a rule of thumb.",
                  seen ? "" : "at least ", std::floor(clock.months), rules.male_months_usual_from,
                  rules.male_months_usual_to);
  return clock;
}

}  // namespace rackside
