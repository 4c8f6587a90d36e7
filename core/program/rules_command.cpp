#include "core/program/rules_command.hpp"

#include <fmt/format.h>

#include "core/care/rule_book.hpp"
#include "core/collection/collection.hpp"
#include "core/store/sqlite_log.hpp"

namespace rackside::program {
namespace {

struct Words {
  std::string species;
  std::string animal;            // its key
  std::vector<std::string> set;  // name and value
};

struct Known {
  RuleBook book;
  std::optional<AnimalState> whose;  // the animal of the words
};

Result<Known> look_up(const Words& words, LogStore& log) {
  std::vector<std::string_view> kinds = roster_kinds();
  kinds.push_back(kind_name(RuleSet{}));
  auto events = log.read_kinds(kinds);
  if (!events) return tl::unexpected(events.error());
  Known known{fold_rules(*events), std::nullopt};
  if (words.animal.empty()) return known;
  const Collection collection = fold_collection(*std::move(events));
  const AnimalState* found = collection.animal_by_key(words.animal);
  if (!found)
    return failure(ErrorKind::NotFound, fmt::format("There is no animal \"{}\" in the log. Nothing "
                                                    "was changed.",
                                                    words.animal));
  known.whose = *found;
  return known;
}

CareRules rules_that_hold(const Words& words, const Known& known) {
  if (known.whose) return known.book.rules_for(*known.whose);
  AnimalState any;
  any.species = words.species;
  return known.book.rules_for(any);
}

void tell(const CareRules& rules) {
  for (const RuleInfo& rule : rule_table()) {
    const std::string value = value_of(rules, rule.name);
    fmt::print("{:<24} {:>8} {:<8} {}{}\n", rule.name, value, rule.unit == "word" ? "" : rule.unit,
               rule.says, value == rule.value ? "" : fmt::format(" (usually {})", rule.value));
  }
}

Draft draft_of(const Words& words, const Known& known, Desk& desk) {
  Draft draft{.id = desk.ids.next_event(),
              .by = {},
              .when = {},
              .animal = {},
              .enclosure = {},
              .details = {},
              .note = {}};
  draft.when = When{desk.clock.now(), Precision::Exact};
  const RuleScope scope = known.whose             ? RuleScope::Animal
                          : words.species.empty() ? RuleScope::Collection
                                                  : RuleScope::Species;
  if (known.whose) draft.animal = known.whose->id;
  draft.details = RuleSet{scope, words.species, words.set[0], words.set[1]};
  return draft;
}

Result<int> rules(const Words& words, Desk& desk) {
  auto log = SqliteLog::open(desk.log, words.set.empty() ? Access::Read : Access::Write);
  if (!log) return tl::unexpected(log.error());
  const auto known = look_up(words, **log);
  if (!known) return tl::unexpected(known.error());
  CareRules holding = rules_that_hold(words, *known);
  if (words.set.empty()) {
    tell(holding);
    return done;
  }
  if (auto fits = set_rule(holding, words.set[0], words.set[1]); !fits)
    return tl::unexpected(fits.error());
  const auto written = (*log)->append({draft_of(words, *known, desk)}, desk.clock.now().utc);
  if (!written) return tl::unexpected(written.error());
  fmt::print("Saved: {} is now {}.\n", words.set[0], words.set[1]);
  return done;
}

}  // namespace

Command add_rules_command(Vocabulary& parser) {
  const auto words = std::make_shared<Words>();
  Vocabulary command = parser.subcommand(
      "rules",
      "Print the rules that the plan of the day goes by, or set one of them. An animal's own value "
      "goes before its species', and that before the collection's.");
  const auto species = command.option("--species", words->species, "the rules of this species");
  command.option("--animal", words->animal, "the rules of the animal with this key")
      .value_name("KEY")
      .excludes(species);
  command.option("--set", words->set, "a rule and its new value")
      .value_name("RULE VALUE")
      .expected(2);
  return {command, [words](Desk& desk) { return rules(*words, desk); }};
}

}  // namespace rackside::program
