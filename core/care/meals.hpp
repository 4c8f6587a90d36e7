#pragma once
// When the next meal is due and what it is, by stage, size, abdomen and appetite. Whether it may be
// offered at all is not asked here.

#include <optional>

#include "core/care/instruction.hpp"

namespace rackside {

/// The stage it has grown into: the record says how it came, and nobody writes down when a sling
/// stops being one.
[[nodiscard]] Stage grown_stage(const AnimalState& animal, const CareRules& rules);

/// Days between two meals that were taken.
[[nodiscard]] int days_between_meals(const AnimalState& animal, const CareRules& rules, Day today);

/// Days without an offer after a moult: longer for a large animal.
[[nodiscard]] int days_to_harden(const AnimalState& animal, const CareRules& rules);

/// From when on a meal is due: after the last one, sooner after a refusal, not before the skin has
/// hardened and the tub has become home. A day in the past means it is due.
[[nodiscard]] Day next_meal_day(const AnimalState& animal, const CareRules& rules, Day today);

enum class Portion { Usual, OneSmall };

/// How likely this animal is to refuse its next offer: its own record, drawn towards the prior, and
/// the chance that it is in premoult.
[[nodiscard]] double refusal_probability(const AnimalState& animal, const CareRules& rules,
                                         double p_premoult);

/// What it is offered; in the place of prey that is not at hand, what the rules say instead.
[[nodiscard]] PreyPlan prey_for(const AnimalState& animal, const CareRules& rules, Portion portion,
                                double p_premoult);

}  // namespace rackside
