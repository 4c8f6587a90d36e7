#include "core/care/findings.hpp"

#include <algorithm>

#include "core/care/meals.hpp"

namespace rackside {
namespace {

// What the record alone says of premoult while no forecast has been computed (from memory): a sign
// that means it nearly always, or two refusals in a row, which hold for three weeks; then one small
// prey tries whether it was only a fast.
constexpr double by_a_sure_sign = 0.8;
constexpr double by_two_refusals = 0.7;
constexpr double by_old_refusals = 0.45;
constexpr int refusals_hold_for = 21;

double premoult_by_record(const Findings& f) {
  if (f.animal.stage == Stage::MatureMale) return 0;
  if (f.signs.has(Sign::DarkAbdomen) || f.signs.has(Sign::SealedIn)) return by_a_sure_sign;
  if (f.animal.refusals_since_meal < 2) return 0;
  const bool lately = f.days_since(f.animal.last_offer->when) < refusals_hold_for;
  return lately ? by_two_refusals : by_old_refusals;
}

void read_signs(Findings& f) {
  if (f.animal.last_looked && f.days_since(*f.animal.last_looked) <= f.rules.signs_good_for)
    f.signs = f.animal.signs;
}

void read_forecast(Findings& f) {
  f.p_premoult = f.forecast ? f.forecast->p_premoult : premoult_by_record(f);
  f.p_hardening = f.forecast ? f.forecast->p_hardening : 0.0;
  f.p_moulted_unseen = f.forecast ? f.forecast->p_moulted_unseen : 0.0;
}

void read_moult(Findings& f, Moment now) {
  const AnimalState& a = f.animal;
  f.days_to_harden = days_to_harden(a, f.rules);
  if (a.last_moult) f.days_since_moult = f.days_since(a.last_moult->noticed);
  // Nobody offers food to an animal on its back: an offer since then means it is over.
  f.on_its_back = a.on_its_back_since && !(a.last_offer && a.last_offer->when.moment.utc >
                                                               a.on_its_back_since->moment.utc);
  if (f.on_its_back)
    f.hours_on_its_back = 24.0 * days_between(a.on_its_back_since->moment.utc, now.utc);
  const bool by_record = f.days_since_moult && *f.days_since_moult < f.days_to_harden;
  f.soft = by_record || f.p_hardening > f.rules.withhold_above;
  const bool moulting = f.forecast && f.forecast->phase == Phase::Moulting;
  f.withhold = f.soft || moulting || f.p_premoult + f.p_hardening > f.rules.withhold_above;
}

void read_last_seen(Findings& f) {
  const AnimalState& a = f.animal;
  const auto seen = [&](const When& when) {
    const int days = f.days_since(when);
    f.days_since_seen = std::min(f.days_since_seen.value_or(days), days);
  };
  if (a.last_looked) seen(*a.last_looked);
  if (a.last_offer) seen(a.last_offer->when);
  if (a.last_moult) seen(a.last_moult->noticed);
}

void read_tub(Findings& f) {
  const AnimalState& a = f.animal;
  const CareRules& r = f.rules;
  if (a.prey_in_tub && f.days_since(*a.prey_in_tub) <= r.left_prey_lapses_after)
    f.prey_left_days = f.days_since(*a.prey_in_tub);
  if (a.shed_in_tub) {
    const int days = f.days_since(*a.shed_in_tub);
    f.shed_waits = days >= r.shed_rests_for && days <= r.shed_lapses_after;
  }
  const auto before_moult = [&](const auto& when) {
    return !when || when->moment.utc < a.last_moult->noticed.moment.utc;
  };
  if (a.last_moult && f.stage != Stage::Sling) {
    const auto measured = a.leg_span ? std::optional(a.leg_span->when) : std::nullopt;
    const auto carapace = a.carapace ? std::optional(a.carapace->when) : std::nullopt;
    const bool to_sex = a.sex == Sex::Unknown && before_moult(a.last_sexed);
    const bool to_measure =
        (measured || carapace) && before_moult(measured) && before_moult(carapace);
    const bool at_hand = f.shed_waits || (a.shed_removed && !before_moult(a.shed_removed) &&
                                          f.days_since(*a.shed_removed) <= r.shed_soft_for);
    f.measure = at_hand && (to_sex || to_measure);
  }
}

void read_water(Findings& f) {
  std::optional<int>& days = f.days_since_water;
  for (const auto& when : {f.animal.last_misted, f.animal.last_watered})
    if (when) days = std::min(days.value_or(f.days_since(*when)), f.days_since(*when));
  // Where water was never written down, a tub is not due for it alone.
  f.water_due = days && *days >= f.rules.water_every;
}

void read_air(Findings& f, const RackClimate* air, Moment now) {
  if (!air) return;
  const auto good = [&](const auto& reading) {
    if (!reading) return false;
    const double age = days_between(reading->when.moment.utc, now.utc);
    return age >= 0 && age <= f.rules.reading_good_for;
  };
  if (good(air->temperature)) f.temperature = air->temperature->value.value;
  f.cold = f.temperature && *f.temperature < f.rules.cold_below;
  f.dry_before_moult = f.p_premoult > f.rules.one_small_above && good(air->humidity) &&
                       air->humidity->value.value < f.rules.dry_below;
}

void read_appetite(Findings& f) {
  const AnimalState& a = f.animal;
  f.meal_due = next_meal_day(a, f.rules, f.today);
  if (a.refusals_since_meal < 2) return;
  int days = f.days_since(a.last_meal ? *a.last_meal : a.added);
  if (f.days_since_moult) days = std::min(days, *f.days_since_moult);
  f.fasting_days = days;
}

}  // namespace

Findings find_out(const AnimalState& animal, const Forecast* forecast, const CareRules& rules,
                  const RackClimate* air, Moment now) {
  Findings f{.animal = animal, .forecast = forecast, .rules = rules, .today = now.day()};
  f.stage = grown_stage(animal, rules);
  read_signs(f);
  read_forecast(f);
  read_moult(f, now);
  read_last_seen(f);
  read_tub(f);
  read_water(f);
  read_air(f, air, now);
  read_appetite(f);
  return f;
}

}  // namespace rackside
