#pragma once
// The words for the choices inside an event, as the interchange files and the log spell them.

#include <optional>
#include <string_view>

#include "core/event/details.hpp"

namespace rackside {

[[nodiscard]] std::string_view word_of(Sex sex);           // "unknown", "female", "male"
[[nodiscard]] std::string_view word_of(Stage stage);       // "unknown", "sling", ... "mature male"
[[nodiscard]] std::string_view word_of(Outcome outcome);   // "took", "refused", "left overnight"
[[nodiscard]] std::string_view word_of(Measure measure);   // "leg span", "carapace"
[[nodiscard]] std::string_view word_of(RuleScope scope);   // "collection", "species", "animal"
[[nodiscard]] std::string_view word_of(Role role);         // "assistant", "keeper"
[[nodiscard]] std::string_view word_of(Arrival arrival);   // "badge", "picked"
[[nodiscard]] std::string_view word_of(ContactKind kind);  // "keeper", "vet", "emergency"

[[nodiscard]] std::optional<Sex> sex_from_word(std::string_view word);
[[nodiscard]] std::optional<Stage> stage_from_word(std::string_view word);
[[nodiscard]] std::optional<Outcome> outcome_from_word(std::string_view word);
[[nodiscard]] std::optional<Measure> measure_from_word(std::string_view word);
[[nodiscard]] std::optional<RuleScope> rule_scope_from_word(std::string_view word);
[[nodiscard]] std::optional<Role> role_from_word(std::string_view word);
[[nodiscard]] std::optional<Arrival> arrival_from_word(std::string_view word);
[[nodiscard]] std::optional<ContactKind> contact_kind_from_word(std::string_view word);

}  // namespace rackside
