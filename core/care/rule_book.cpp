#include "core/care/rule_book.hpp"

namespace rackside {
namespace {

template <class Key>
void overlay(CareRules& rules, const std::map<Key, RuleBook::Values>& book, const Key& key) {
  const auto found = book.find(key);
  if (found == book.end()) return;
  for (const auto& [name, value] : found->second)
    static_cast<void>(set_rule(rules, name, value));  // was accepted when it was folded
}

}  // namespace

CareRules RuleBook::rules_for(const AnimalState& animal) const {
  CareRules rules = collection;
  overlay(rules, species, animal.species);
  overlay(rules, animals, animal.id);
  return rules;
}

void apply(RuleBook& book, const Event& event) {
  const auto* set = std::get_if<RuleSet>(&event.details);
  if (!set) return;
  CareRules tried;
  const bool for_nobody = set->scope == RuleScope::Animal && !event.animal;
  if (for_nobody || !set_rule(tried, set->rule, set->value)) {
    book.ignored.push_back(event.id);
    return;
  }
  switch (set->scope) {
    case RuleScope::Collection:
      static_cast<void>(set_rule(book.collection, set->rule, set->value));
      return;
    case RuleScope::Species: book.species[set->species][set->rule] = set->value; return;
    case RuleScope::Animal: book.animals[*event.animal][set->rule] = set->value; return;
  }
}

RuleBook fold_rules(std::vector<Event> events) {
  RuleBook book;
  for (const Event& event : standing(std::move(events))) apply(book, event);
  return book;
}

}  // namespace rackside
