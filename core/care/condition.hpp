#pragma once
// How an animal is, as one word: for maps, lists and finding, where there is no room for its
// sentence.

#include <array>
#include <string_view>

#include "core/care/instruction.hpp"

namespace rackside {

struct Findings;

/// What weighs most about it; the state sentence (core/care/instruction.hpp) says the same in full.
enum class Condition {
  Moulting,  // on its back
  Shrivelled,
  Hardening,
  MatureMale,
  GuardsSac,
  Premoult,
  MoultedUnseen,
  Fasting,
  Newcomer,  // no meal on record yet
  Feeding,
  Gone,
};

inline constexpr std::array all_conditions{
    Condition::Moulting,  Condition::Shrivelled, Condition::Hardening,     Condition::MatureMale,
    Condition::GuardsSac, Condition::Premoult,   Condition::MoultedUnseen, Condition::Fasting,
    Condition::Newcomer,  Condition::Feeding,    Condition::Gone,
};

/// "moulting", "premoult", "unseen moult". No two begin with the same two letters.
[[nodiscard]] std::string_view condition_word(Condition condition);

[[nodiscard]] Condition condition_of(const Findings& findings);
/// As instruct.
[[nodiscard]] Condition condition_of(const AnimalState& animal, const Forecast* forecast,
                                     const CareRules& rules, Moment now);

}  // namespace rackside
