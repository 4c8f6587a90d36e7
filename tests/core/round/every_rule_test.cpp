#include <set>

#include "tests/core/round/rule_examples.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

std::vector<RuleExample> all_examples() {
  std::vector<RuleExample> all = feeding_examples();
  for (auto& part : {tub_examples(), room_examples()})
    all.insert(all.end(), part.begin(), part.end());
  return all;
}

std::string answer(const RuleExample& example, const std::string& value) {
  CareRules rules = default_rules();
  REQUIRE(set_rule(rules, example.rule, value));
  return example.ask(rules);
}

}  // namespace

TEST_CASE("every rule decides, and decides otherwise at another value") {
  std::set<std::string> shown;
  for (const RuleExample& example : all_examples()) {
    INFO(example.rule);
    CHECK(example.says != example.says_then);
    CHECK(answer(example, example.value) == example.says);
    CHECK(answer(example, example.other_value) == example.says_then);
    shown.insert(example.rule);
  }
  shown.insert("tell_moult_above");  // about stand-ins: tests/core/cover/moult_window_test.cpp
  for (const RuleInfo& rule : rule_table()) {
    INFO(rule.name << " has no example");
    CHECK(shown.contains(rule.name));
  }
  CHECK(shown.size() == rule_table().size());
}
