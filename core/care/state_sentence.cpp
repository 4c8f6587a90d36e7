#include <fmt/format.h>

#include <cmath>

#include "core/care/condition.hpp"
#include "core/care/findings.hpp"
#include "core/words/dates.hpp"
#include "core/words/sentences.hpp"

namespace rackside {
namespace {

std::string gone(const AnimalState& animal) {
  const std::string day = animal.ended ? format_day(animal.ended->moment.day()) : "some time ago";
  return fmt::format("{} {}", animal.life == Life::Died ? "Died" : "Left", day);
}

std::string on_its_back(const Findings& f) {
  if (f.hours_on_its_back <= f.rules.moult_takes_at_most) return "Moulting now: leave it alone";
  return fmt::format("On its back for {:.0f} hours", f.hours_on_its_back);
}

std::string hardening(const Findings& f) {
  if (!f.days_since_moult || *f.days_since_moult >= f.days_to_harden)
    return fmt::format("Hardening, {} likely", in_ten(f.p_hardening));
  return fmt::format("Hardening: {} {}", f.animal.last_moult->date_known ? "moulted" : "shed found",
                     days_ago(*f.days_since_moult));
}

std::string male(const Findings& f) {
  const auto clock = male_clock(f.animal, f.rules, f.today);
  const int months = static_cast<int>(std::floor(clock->months));
  return fmt::format("Mature male, {}{}", clock->at_least ? "at least " : "",
                     count_of(months, "month"));
}

}  // namespace

std::string state_sentence(const AnimalState& animal, const Forecast* forecast,
                           const CareRules& rules, Moment now) {
  const Findings f = find_out(animal, forecast, rules, nullptr, now);
  switch (condition_of(f)) {
    case Condition::Gone: return gone(animal);
    case Condition::Moulting: return on_its_back(f);
    case Condition::Shrivelled: return "Shrivelled abdomen";
    case Condition::Hardening: return hardening(f);
    case Condition::MatureMale: return male(f);
    case Condition::GuardsSac:
      return fmt::format("Guards a sac, {}",
                         count_of(f.days_since(*animal.guards_sac_since), "day"));
    case Condition::Premoult: return fmt::format("In premoult, {} likely", in_ten(f.p_premoult));
    case Condition::MoultedUnseen:
      return fmt::format("Moulted unseen, {} likely", in_ten(f.p_moulted_unseen));
    case Condition::Fasting:
      return fmt::format("Fasting: no meal for {}", count_of(*f.fasting_days, "day"));
    case Condition::Newcomer: return "No meal on record yet";
    case Condition::Feeding:
      return fmt::format("Feeding; last meal {}", days_ago(f.days_since(*animal.last_meal)));
  }
  return {};
}

}  // namespace rackside
