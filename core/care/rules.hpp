#pragma once
// The numbers care goes by, out of rules.toml, where each says what it is and where it is from.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/values/result.hpp"
#include "core/values/units.hpp"
#include "core/words/wording.hpp"

namespace rackside {

/// Prey that is not at hand, and what is offered in its place.
struct PreyInstead {
  std::string kind;
  std::optional<Millimetres> size;  // none: prey whose size is not known
  std::string other;
  std::optional<Millimetres> other_size;  // none: the size that was planned

  bool operator==(const PreyInstead&) const = default;
};

/// One value a rule, in the unit its row in rules.toml names. What each is for stands there.
struct CareRules {
  // No rules: how the sentences tell days and sizes, and what there is for this round.
  Wording wording;
  std::vector<PreyInstead> instead;

  double feed_every_sling = 0;
  double feed_every_juvenile = 0;
  double feed_every_adult = 0;
  double feed_every_mature_male = 0;
  double feed_every_unknown = 0;
  double sling_until_instar = 0;
  double sling_for_moults = 0;
  double adult_from_instar = 0;
  double plump_factor = 0;
  double poor_appetite_share = 0;
  double poor_appetite_factor = 0;
  double poor_appetite_offers = 0;
  double retry_after = 0;
  double settle_after_move = 0;

  std::string prey;
  double prey_count_sling = 0;
  double prey_count_juvenile = 0;
  double prey_count_adult = 0;
  double prey_share_of_leg_span = 0;
  double prey_size_sling = 0;
  double prey_size_juvenile = 0;
  double prey_size_adult = 0;
  double small_prey_factor = 0;

  double withhold_above = 0;
  double one_small_above = 0;
  double unseen_moult_above = 0;
  double look_in_premoult_every = 0;
  double harden_for = 0;
  double harden_for_large = 0;
  double large_leg_span = 0;
  double moult_takes_at_most = 0;
  double refusing_after_moult = 0;
  double shed_rests_for = 0;
  double shed_lapses_after = 0;
  double shed_soft_for = 0;

  double fast_question_sling = 0;
  double fast_question_juvenile = 0;
  double fast_question_adult = 0;
  double ask_again_after = 0;
  double signs_good_for = 0;
  double left_prey_check_after = 0;
  double left_prey_lapses_after = 0;
  double male_months_usual_from = 0;
  double male_months_usual_to = 0;

  double water_every = 0;
  double no_water_after = 0;
  double reading_good_for = 0;
  double cold_below = 0;
  double dry_below = 0;
  double rack_refuses_share = 0;
  double rack_refuses_tubs = 0;

  double tell_moult_above = 0;

  double refusal_prior = 0;
  double refusal_in_premoult = 0;
  double margin = 0;

  bool operator==(const CareRules&) const = default;
};

/// A rule as a person reads it.
struct RuleInfo {
  std::string name;
  std::string value;  // the default, as a person would type it
  std::string unit;   // "word" for the one that is no number
  double least = 0;
  double most = 0;
  std::string says;
  std::string source;
};

/// Every rule, in the order of their names.
[[nodiscard]] const std::vector<RuleInfo>& rule_table();

[[nodiscard]] const CareRules& default_rules();

/// The value of the rule `name`, as a person would type it; empty when there is no such rule.
[[nodiscard]] std::string value_of(const CareRules& rules, std::string_view name);

/// Errors: NotFound when there is no such rule; BadInput when the value is none of its kind or lies
/// outside what is accepted, with the limits in the sentence.
[[nodiscard]] Result<void> set_rule(CareRules& rules, std::string_view name,
                                    std::string_view value);

}  // namespace rackside
