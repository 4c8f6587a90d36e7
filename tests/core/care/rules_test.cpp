#include "core/care/rule_book.hpp"

#include "tests/core/care/scenario.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

Event rule(std::int64_t order, RuleSet set) {
  return make_event(order, static_cast<double>(order), animal_number(1), std::move(set));
}

RuleSet for_animal(std::string name, std::string value) {
  return {RuleScope::Animal, "", std::move(name), std::move(value)};
}
RuleSet for_species(std::string species, std::string name, std::string value) {
  return {RuleScope::Species, std::move(species), std::move(name), std::move(value)};
}

AnimalState living(int number, std::string species) {
  AnimalState animal;
  animal.id = animal_number(number);
  animal.species = std::move(species);
  return animal;
}

}  // namespace

TEST_CASE("every rule says what it is, where it is from, and takes its own default") {
  REQUIRE(rule_table().size() > 40);
  for (const RuleInfo& info : rule_table()) {
    INFO(info.name);
    CHECK_FALSE(info.says.empty());
    CHECK_FALSE(info.source.empty());
    CareRules rules;
    CHECK(set_rule(rules, info.name, info.value));
    CHECK(value_of(rules, info.name) == info.value);
  }
}

TEST_CASE("every number in the rules has its row in the table") {
  CareRules zero = default_rules();
  for (const RuleInfo& info : rule_table()) {
    CareRules changed = zero;
    const std::string other = info.unit == "word" ? "locust" : std::to_string(info.most);
    REQUIRE(set_rule(changed, info.name, other));
    INFO(info.name);
    CHECK_FALSE(changed == zero);
  }
}

TEST_CASE("a rule that does not exist or a value out of its limits is refused with a sentence") {
  CareRules rules = default_rules();
  const auto unknown = set_rule(rules, "feed_every_dragon", "3");
  REQUIRE_FALSE(unknown);
  CHECK(unknown.error().kind == ErrorKind::NotFound);
  for (const char* value : {"0", "-3", "1e9", "nan", "weekly", "", "7 days"}) {
    INFO(value);
    const auto set = set_rule(rules, "feed_every_sling", value);
    REQUIRE_FALSE(set);
    CHECK(set.error().kind == ErrorKind::BadInput);
  }
  CHECK_FALSE(set_rule(rules, "prey", ""));
  CHECK(rules == default_rules());
}

TEST_CASE("the keeper's own value goes animal before species before collection") {
  const auto book = fold_rules({
      rule(1, {RuleScope::Collection, "", "retry_after", "5"}),
      rule(2, for_species("Orphnaecus philippinus", "retry_after", "6")),
      rule(3, for_animal("retry_after", "9")),
      rule(4, for_species("Orphnaecus philippinus", "retry_after", "8")),
  });
  CHECK(book.rules_for(living(1, "Orphnaecus philippinus")).retry_after == 9);
  CHECK(book.rules_for(living(2, "Orphnaecus philippinus")).retry_after == 8);
  CHECK(book.rules_for(living(2, "Neoholothele incei")).retry_after == 5);
  CHECK(fold_rules({}).rules_for(living(1, "")) == default_rules());
}

TEST_CASE("a rule that is taken back gives way to the one before") {
  const auto book =
      fold_rules({rule(1, for_animal("retry_after", "5")), rule(2, for_animal("retry_after", "9")),
                  make_event(3, 3, animal_number(1), Retracted{event_number(2)})});
  CHECK(book.rules_for(living(1, "")).retry_after == 5);
}

TEST_CASE("a rule in the log that makes no sense is passed over and named") {
  const auto book = fold_rules({rule(1, for_animal("retry_after", "often"))});
  CHECK(book.ignored == std::vector{event_number(1)});
  CHECK(book.rules_for(living(1, "")) == default_rules());
}

TEST_CASE("an override changes what is said at the tub") {
  Scenario burrower;
  burrower.meal(9).believed(0);
  CHECK(burrower.told().task == Task::Offer);
  burrower.rules =
      fold_rules({rule(1, for_animal("feed_every_juvenile", "21"))}).rules_for(burrower.state());
  CHECK(burrower.told().task == Task::NotDue);
}
