#include "core/care/rules.hpp"

#include <fmt/format.h>

#include <toml++/toml.h>
#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>
#include <optional>

namespace rackside {

extern const std::string_view rules_text;  // rules.toml

namespace {

struct Member {
  std::string_view name;
  double CareRules::*value;
};

#define RULE(name) \
  Member { #name, &CareRules::name }
constexpr std::array members{
    RULE(feed_every_sling),
    RULE(feed_every_juvenile),
    RULE(feed_every_adult),
    RULE(feed_every_mature_male),
    RULE(feed_every_unknown),
    RULE(plump_factor),
    RULE(sling_until_instar),
    RULE(sling_for_moults),
    RULE(adult_from_instar),
    RULE(poor_appetite_share),
    RULE(poor_appetite_factor),
    RULE(poor_appetite_offers),
    RULE(retry_after),
    RULE(settle_after_move),
    RULE(prey_count_sling),
    RULE(prey_count_juvenile),
    RULE(prey_count_adult),
    RULE(prey_share_of_leg_span),
    RULE(prey_size_sling),
    RULE(prey_size_juvenile),
    RULE(prey_size_adult),
    RULE(small_prey_factor),
    RULE(withhold_above),
    RULE(one_small_above),
    RULE(unseen_moult_above),
    RULE(look_in_premoult_every),
    RULE(harden_for),
    RULE(harden_for_large),
    RULE(large_leg_span),
    RULE(moult_takes_at_most),
    RULE(refusing_after_moult),
    RULE(shed_rests_for),
    RULE(shed_lapses_after),
    RULE(shed_soft_for),
    RULE(fast_question_sling),
    RULE(fast_question_juvenile),
    RULE(fast_question_adult),
    RULE(ask_again_after),
    RULE(signs_good_for),
    RULE(left_prey_check_after),
    RULE(left_prey_lapses_after),
    RULE(male_months_usual_from),
    RULE(male_months_usual_to),
    RULE(water_every),
    RULE(no_water_after),
    RULE(reading_good_for),
    RULE(cold_below),
    RULE(dry_below),
    RULE(rack_refuses_share),
    RULE(rack_refuses_tubs),
    RULE(tell_moult_above),
    RULE(refusal_prior),
    RULE(refusal_in_premoult),
    RULE(margin),
};
#undef RULE

RuleInfo read_row(std::string_view name, const toml::table& row) {
  const auto number = row["value"].value<double>();
  return RuleInfo{
      .name = std::string(name),
      .value = number ? fmt::format("{}", *number) : row["value"].value_or(std::string{}),
      .unit = row["unit"].value_or(std::string{}),
      .least = row["least"].value_or(0.0),
      .most = row["most"].value_or(0.0),
      .says = row["says"].value_or(std::string{}),
      .source = row["source"].value_or(std::string{})};
}

std::optional<double> number_in(std::string_view text) {
  double value = 0;
  const auto [end, code] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (code != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  return value;
}

Result<void> refuse(const RuleInfo& rule, std::string_view value) {
  if (rule.unit == "word")
    return failure(ErrorKind::BadInput,
                   fmt::format("The rule {} needs a word. Nothing was changed.", rule.name));
  return failure(ErrorKind::BadInput,
                 fmt::format("The rule {} takes {} to {} {}, not \"{}\". Nothing was changed.",
                             rule.name, rule.least, rule.most, rule.unit, value));
}

CareRules read_defaults() {
  CareRules rules;
  for (const RuleInfo& rule : rule_table()) {
    const auto set = set_rule(rules, rule.name, rule.value);
    assert(set.has_value());
    static_cast<void>(set);
  }
  return rules;
}

}  // namespace

const std::vector<RuleInfo>& rule_table() {
  static const std::vector<RuleInfo> table = [] {
    std::vector<RuleInfo> rows;
    for (const auto& [name, row] : toml::parse(rules_text))
      rows.push_back(read_row(name.str(), *row.as_table()));
    std::ranges::sort(rows, {}, &RuleInfo::name);
    assert(rows.size() == members.size() + 1);  // every number and the prey
    return rows;
  }();
  return table;
}

const CareRules& default_rules() {
  static const CareRules rules = read_defaults();
  return rules;
}

std::string value_of(const CareRules& rules, std::string_view name) {
  if (name == "prey") return rules.prey;
  const auto member = std::ranges::find(members, name, &Member::name);
  return member == members.end() ? std::string{} : fmt::format("{}", rules.*member->value);
}

Result<void> set_rule(CareRules& rules, std::string_view name, std::string_view value) {
  const auto row = std::ranges::find(rule_table(), name, &RuleInfo::name);
  if (row == rule_table().end())
    return failure(ErrorKind::NotFound,
                   fmt::format("There is no rule \"{}\". Nothing was changed.", name));
  if (name == "prey") {
    if (value.empty()) return refuse(*row, value);
    rules.prey = value;
    return {};
  }
  const auto number = number_in(value);
  // Written so that a value that is no number at all is refused too.
  if (!number || !(*number >= row->least && *number <= row->most)) return refuse(*row, value);
  rules.*std::ranges::find(members, name, &Member::name)->value = *number;
  return {};
}

}  // namespace rackside
