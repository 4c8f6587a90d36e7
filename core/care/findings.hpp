#pragma once
// What the record and the forecast say together about one animal at one moment, in the terms that
// the rules of care speak of.

#include <optional>

#include "core/care/instruction.hpp"
#include "core/words/dates.hpp"
#include "core/words/sentences.hpp"

namespace rackside {

struct Findings {
  const AnimalState& animal;
  const Forecast* forecast;  // may be null
  const CareRules& rules;
  Day today;

  Stage stage = Stage::Unknown;  // it has grown into
  SignSet signs;                 // of the last look, while it still says something
  double p_premoult = 0;
  double p_hardening = 0;
  double p_moulted_unseen = 0;

  std::optional<int> days_since_moult;  // by the record
  std::optional<int> days_since_seen;   // a look, an offer, a moult: somebody saw the animal
  int days_to_harden = 0;
  bool on_its_back = false;
  double hours_on_its_back = 0;
  bool soft = false;      // hardening by the record or, more likely than the threshold, by forecast
  bool withhold = false;  // in premoult or hardening, more likely than the threshold
  std::optional<int> prey_left_days;    // prey is in the tub since so many days
  bool shed_waits = false;              // a shed that can be taken out
  bool measure = false;                 // a shed from which something is to be learned
  std::optional<int> days_since_water;  // misted or filled, as far as that is written down
  bool water_due = false;
  bool cold = false;  // by a reading that is still good
  bool dry_before_moult = false;
  std::optional<double> temperature;
  std::optional<int> fasting_days;  // refusing since then; none while it is not refusing
  Day meal_due;

  [[nodiscard]] std::string on_day(Day day) const {
    return on_day_words(day, today, rules.wording.dates);
  }
  [[nodiscard]] std::string reason_line(const Reason& reason) const {
    return as_line(with_days(reason.text, reason.days, today, rules.wording.dates));
  }
  /// The temperature here, "24 °C"; only where there is one.
  [[nodiscard]] std::string degrees() const {
    return temperature_words({*temperature}, rules.wording.units);
  }
  [[nodiscard]] int days_since(const When& when) const {
    return static_cast<int>((today - when.moment.day()).count());
  }
};

[[nodiscard]] Findings find_out(const AnimalState& animal, const Forecast* forecast,
                                const CareRules& rules, const RackClimate* air, Moment now);

}  // namespace rackside
