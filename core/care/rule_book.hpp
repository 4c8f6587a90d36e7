#pragma once
// The rules as this keeper has them: the defaults, and what the log says goes before them.

#include <map>
#include <string>
#include <vector>

#include "core/care/rules.hpp"
#include "core/collection/animal.hpp"
#include "core/event/event.hpp"

namespace rackside {

struct RuleBook {
  using Values = std::map<std::string, std::string>;  // rule name -> value

  CareRules collection = default_rules();
  std::map<std::string, Values> species;
  std::map<AnimalId, Values> animals;
  std::vector<EventId> ignored;  // "rule set" events that name no rule or a value it does not take

  /// Animal before species before collection before the defaults.
  [[nodiscard]] CareRules rules_for(const AnimalState& animal) const;

  bool operator==(const RuleBook&) const = default;
};

/// Brings `book` up to date with one standing event; only "rule set" changes anything.
void apply(RuleBook& book, const Event& event);

/// Events in any order, retractions among them. The last value of a rule holds.
[[nodiscard]] RuleBook fold_rules(std::vector<Event> events);

}  // namespace rackside
