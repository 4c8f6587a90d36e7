#include "core/care/meals.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace rackside {
namespace {

// How many offers the prior counts for.
constexpr double prior_offers = 5.0;
// Feeder insects are sold by size; nobody sorts crickets to the millimetre.
constexpr std::array sold_sizes{2.0, 3.0, 5.0, 8.0, 10.0, 12.0, 15.0, 20.0, 25.0, 30.0, 40.0};

std::chrono::days whole_days(double days) {
  return std::chrono::days{static_cast<int>(std::lround(days))};
}

double stage_interval(Stage stage, const CareRules& rules) {
  switch (stage) {
    case Stage::Sling: return rules.feed_every_sling;
    case Stage::Juvenile: return rules.feed_every_juvenile;
    case Stage::Adult: return rules.feed_every_adult;
    case Stage::MatureMale: return rules.feed_every_mature_male;
    case Stage::Unknown: return rules.feed_every_unknown;
  }
  return rules.feed_every_unknown;
}

bool is_plump(const AnimalState& animal, const CareRules& rules, Day today) {
  return animal.last_looked && animal.signs.has(Sign::PlumpAbdomen) &&
         today - animal.last_looked->moment.day() <= whole_days(rules.signs_good_for);
}

bool has_poor_appetite(const AnimalState& animal, const CareRules& rules) {
  return animal.offers >= rules.poor_appetite_offers &&
         animal.refusals > rules.poor_appetite_share * animal.offers;
}

Day after_last_offer(const AnimalState& animal, const CareRules& rules, Day today) {
  const Day last = animal.last_offer->when.moment.day();
  const int usual = days_between_meals(animal, rules, today);
  if (animal.last_offer->outcome == Outcome::Took) return last + std::chrono::days{usual};
  // Two tries in short order; after that nagging it would only disturb it.
  const auto retry = whole_days(rules.retry_after);
  if (animal.refusals_since_meal <= 2) return last + retry;
  return last + std::max(retry, std::chrono::days{usual});
}

int usual_count(Stage stage, const CareRules& rules) {
  switch (stage) {
    case Stage::Sling: return static_cast<int>(std::lround(rules.prey_count_sling));
    case Stage::Adult: return static_cast<int>(std::lround(rules.prey_count_adult));
    case Stage::MatureMale:
    case Stage::Juvenile:
    case Stage::Unknown: return static_cast<int>(std::lround(rules.prey_count_juvenile));
  }
  return 1;
}

double size_by_stage(Stage stage, const CareRules& rules) {
  switch (stage) {
    case Stage::Sling: return rules.prey_size_sling;
    case Stage::Adult:
    case Stage::MatureMale: return rules.prey_size_adult;
    case Stage::Juvenile:
    case Stage::Unknown: return rules.prey_size_juvenile;
  }
  return rules.prey_size_juvenile;
}

// What was learned last holds: a measure, or the size of what it took since then.
double usual_size(const AnimalState& animal, const CareRules& rules) {
  const bool eaten_since = animal.meal.size && animal.leg_span &&
                           animal.last_meal->moment.utc > animal.leg_span->when.moment.utc;
  if (animal.leg_span && !eaten_since)
    return animal.leg_span->length.value * rules.prey_share_of_leg_span;
  if (animal.meal.size) return animal.meal.size->value;
  return size_by_stage(grown_stage(animal, rules), rules);
}

double nearest_sold(double millimetres) {
  return *std::ranges::min_element(sold_sizes, {},
                                   [&](double size) { return std::abs(size - millimetres); });
}

// Each replaced once only: two kinds may stand in for each other.
PreyPlan at_hand(PreyPlan prey, const std::vector<PreyInstead>& instead) {
  const auto found = std::ranges::find_if(instead, [&](const PreyInstead& missing) {
    return missing.kind == prey.kind && missing.size == prey.size;
  });
  if (found == instead.end()) return prey;
  prey.kind = found->other;
  if (found->other_size) prey.size = found->other_size;
  return prey;
}

bool is_grown(Stage stage) { return stage == Stage::Adult || stage == Stage::MatureMale; }

}  // namespace

Stage grown_stage(const AnimalState& animal, const CareRules& rules) {
  const Stage came_as = animal.stage;
  if (came_as == Stage::MatureMale || came_as == Stage::Adult) return came_as;
  if (animal.instar && *animal.instar >= rules.adult_from_instar) return Stage::Adult;
  const bool small = animal.instar ? *animal.instar <= rules.sling_until_instar
                                   : animal.moults < rules.sling_for_moults;
  if (came_as == Stage::Sling) return small ? Stage::Sling : Stage::Juvenile;
  if (came_as == Stage::Unknown && animal.instar) return small ? Stage::Sling : Stage::Juvenile;
  return came_as;
}

int days_between_meals(const AnimalState& animal, const CareRules& rules, Day today) {
  double days = stage_interval(grown_stage(animal, rules), rules);
  if (is_plump(animal, rules, today)) days *= rules.plump_factor;
  if (has_poor_appetite(animal, rules)) days *= rules.poor_appetite_factor;
  return static_cast<int>(std::lround(days));
}

int days_to_harden(const AnimalState& animal, const CareRules& rules) {
  const bool large = animal.leg_span ? animal.leg_span->length.value >= rules.large_leg_span
                                     : is_grown(grown_stage(animal, rules));
  return static_cast<int>(std::lround(large ? rules.harden_for_large : rules.harden_for));
}

Day next_meal_day(const AnimalState& animal, const CareRules& rules, Day today) {
  Day due = animal.last_offer ? after_last_offer(animal, rules, today) : today;
  if (animal.last_moult) {
    const Day moulted = animal.last_moult->noticed.moment.day();
    const Day hardened = moulted + std::chrono::days{days_to_harden(animal, rules)};
    const bool offered_since = animal.last_offer && animal.last_offer->when.moment.day() > moulted;
    due = offered_since ? std::max(due, hardened) : hardened;
  }
  if (animal.housed)
    due = std::max(due, animal.housed->moment.day() + whole_days(rules.settle_after_move));
  return due;
}

double refusal_probability(const AnimalState& animal, const CareRules& rules, double p_premoult) {
  const double ordinary =
      (animal.refusals + prior_offers * rules.refusal_prior) / (animal.offers + prior_offers);
  return p_premoult * std::max(rules.refusal_in_premoult, ordinary) + (1 - p_premoult) * ordinary;
}

PreyPlan prey_for(const AnimalState& animal, const CareRules& rules, Portion portion,
                  double p_premoult) {
  const bool small = portion == Portion::OneSmall;
  // The keeper's own word for this animal or species goes before what it took last.
  const bool own_word = rules.prey != default_rules().prey;
  const double size = usual_size(animal, rules) * (small ? rules.small_prey_factor : 1.0);
  PreyPlan prey{
      .kind = own_word || animal.meal.prey.empty() ? rules.prey : animal.meal.prey,
      .count =
          std::max(1, animal.count) * (small ? 1 : usual_count(grown_stage(animal, rules), rules)),
      .size = Millimetres{nearest_sold(size)},
      .p_refused = refusal_probability(animal, rules, p_premoult),
  };
  return at_hand(std::move(prey), rules.instead);
}

}  // namespace rackside
