#include "core/event/words.hpp"

#include <array>

namespace rackside {
namespace {

constexpr std::array<std::string_view, 3> sexes{"unknown", "female", "male"};
constexpr std::array<std::string_view, 5> stages{"unknown", "sling", "juvenile", "adult",
                                                 "mature male"};
constexpr std::array<std::string_view, 3> outcomes{"took", "refused", "left overnight"};
constexpr std::array<std::string_view, 2> measures{"leg span", "carapace"};
constexpr std::array<std::string_view, 3> scopes{"collection", "species", "animal"};
constexpr std::array<std::string_view, 2> roles{"assistant", "keeper"};
constexpr std::array<std::string_view, 2> arrivals{"badge", "picked"};
constexpr std::array<std::string_view, 3> contacts{"keeper", "vet", "emergency"};

template <class Enum, std::size_t N>
std::optional<Enum> find_word(const std::array<std::string_view, N>& words, std::string_view word) {
  for (std::size_t i = 0; i < N; ++i)
    if (words[i] == word) return static_cast<Enum>(i);
  return std::nullopt;
}

}  // namespace

std::string_view word_of(Sex sex) { return sexes[static_cast<std::size_t>(sex)]; }
std::string_view word_of(Stage stage) { return stages[static_cast<std::size_t>(stage)]; }
std::string_view word_of(Outcome outcome) { return outcomes[static_cast<std::size_t>(outcome)]; }
std::string_view word_of(Measure measure) { return measures[static_cast<std::size_t>(measure)]; }
std::string_view word_of(RuleScope scope) { return scopes[static_cast<std::size_t>(scope)]; }
std::string_view word_of(Role role) { return roles[static_cast<std::size_t>(role)]; }
std::string_view word_of(Arrival arrival) { return arrivals[static_cast<std::size_t>(arrival)]; }
std::string_view word_of(ContactKind kind) { return contacts[static_cast<std::size_t>(kind)]; }

std::optional<Sex> sex_from_word(std::string_view word) { return find_word<Sex>(sexes, word); }
std::optional<Stage> stage_from_word(std::string_view word) {
  return find_word<Stage>(stages, word);
}
std::optional<Outcome> outcome_from_word(std::string_view word) {
  return find_word<Outcome>(outcomes, word);
}
std::optional<Measure> measure_from_word(std::string_view word) {
  return find_word<Measure>(measures, word);
}
std::optional<RuleScope> rule_scope_from_word(std::string_view word) {
  return find_word<RuleScope>(scopes, word);
}
std::optional<Role> role_from_word(std::string_view word) { return find_word<Role>(roles, word); }
std::optional<Arrival> arrival_from_word(std::string_view word) {
  return find_word<Arrival>(arrivals, word);
}
std::optional<ContactKind> contact_kind_from_word(std::string_view word) {
  return find_word<ContactKind>(contacts, word);
}

}  // namespace rackside
