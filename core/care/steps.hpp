#pragma once
// The rules of care, one function each: given what was found, an instruction or none. They are
// asked in the order of the table in instruct.cpp, and the first that answers is followed, which is
// why no two can contradict each other.

#include <optional>

#include "core/care/findings.hpp"

namespace rackside {

using Step = std::optional<Instruction> (*)(const Findings&);

// Parts that several of them use.

/// The forecast's strongest reasons for premoult as lines of `why`, up to `most` lines in all.
void add_reasons(std::vector<std::string>& why, const Findings& f, std::size_t most);
/// Water may always be given to an animal that waits, but not in the first days of a soft skin.
[[nodiscard]] bool mist_now(const Findings& f);
/// Water, and nothing to eat.
[[nodiscard]] Instruction mist_only(std::vector<std::string> why, std::optional<Day> next);

// Cannot wait.
std::optional<Instruction> prey_beside_a_moult(const Findings& f);
std::optional<Instruction> moult_takes_too_long(const Findings& f);
std::optional<Instruction> is_moulting(const Findings& f);
std::optional<Instruction> is_shrivelled(const Findings& f);
std::optional<Instruction> prey_was_left(const Findings& f);
std::optional<Instruction> refuses_after_moult(const Findings& f);

// Around the moult.
std::optional<Instruction> has_just_moulted(const Findings& f);
std::optional<Instruction> guards_a_sac(const Findings& f);
std::optional<Instruction> shed_is_in_the_tub(const Findings& f);
std::optional<Instruction> is_hardening(const Findings& f);
std::optional<Instruction> is_sluggish_alone(const Findings& f);
std::optional<Instruction> is_in_premoult(const Findings& f);
std::optional<Instruction> may_have_moulted(const Findings& f);

// Between moults.
std::optional<Instruction> fasts_without_a_sign(const Findings& f);
std::optional<Instruction> meal_is_due(const Findings& f);
std::optional<Instruction> shed_is_to_be_measured(const Findings& f);
std::optional<Instruction> water_is_due(const Findings& f);
std::optional<Instruction> waits_for_a_meal(const Findings& f);

}  // namespace rackside
