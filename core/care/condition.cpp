#include "core/care/condition.hpp"

#include "core/care/findings.hpp"

namespace rackside {

std::string_view condition_word(Condition condition) {
  switch (condition) {
    case Condition::Moulting: return "moulting";
    case Condition::Shrivelled: return "shrivelled";
    case Condition::Hardening: return "hardening";
    case Condition::MatureMale: return "mature male";
    case Condition::GuardsSac: return "sac";
    case Condition::Premoult: return "premoult";
    case Condition::MoultedUnseen: return "unseen moult";
    case Condition::Fasting: return "fasting";
    case Condition::Newcomer: return "new";
    case Condition::Feeding: return "feeding";
    case Condition::Gone: return "gone";
  }
  return {};
}

Condition condition_of(const Findings& f) {
  if (f.animal.life != Life::Living) return Condition::Gone;
  if (f.on_its_back) return Condition::Moulting;
  if (f.signs.has(Sign::ShrivelledAbdomen)) return Condition::Shrivelled;
  if (f.soft) return Condition::Hardening;
  if (f.animal.stage == Stage::MatureMale) return Condition::MatureMale;
  if (f.animal.guards_sac_since) return Condition::GuardsSac;
  if (f.withhold) return Condition::Premoult;
  if (f.p_moulted_unseen >= f.rules.unseen_moult_above) return Condition::MoultedUnseen;
  if (f.fasting_days) return Condition::Fasting;
  return f.animal.last_meal ? Condition::Feeding : Condition::Newcomer;
}

Condition condition_of(const AnimalState& animal, const Forecast* forecast, const CareRules& rules,
                       Moment now) {
  return condition_of(find_out(animal, forecast, rules, nullptr, now));
}

}  // namespace rackside
