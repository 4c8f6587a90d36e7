#pragma once
// For every rule a case in which it decides, told at two of its values: an example and its
// opposite.

#include <functional>
#include <string>
#include <vector>

#include "core/care/rules.hpp"

namespace rackside::tests {

struct RuleExample {
  std::string rule;
  std::string value;
  std::string says;
  std::string other_value;
  std::string says_then;
  std::function<std::string(const CareRules&)> ask;
};

/// How often and what is offered.
[[nodiscard]] std::vector<RuleExample> feeding_examples();
/// Around the moult, and what needs a closer look.
[[nodiscard]] std::vector<RuleExample> tub_examples();
/// Water, the air, and preparing a round.
[[nodiscard]] std::vector<RuleExample> room_examples();

}  // namespace rackside::tests
