#pragma once
// What is said to somebody who is not a keeper: one thing to do at a tub, and where it ends. What
// only a keeper should do is not among it.

#include <string>
#include <vector>

#include "core/care/instruction.hpp"

namespace rackside {

/// What a stand-in has to do with a tub on one day.
enum class Duty {
  Do,          // go there
  KeepClosed,  // do not open it
  Nothing,     // nothing today
};

/// "do", "keep closed", "nothing".
[[nodiscard]] std::string_view duty_word(Duty duty);

[[nodiscard]] Duty duty_of(const Instruction& said);

/// "Offer 2 crickets of about 8 mm, no more."
[[nodiscard]] std::string assistant_sentence(const Instruction& said, Units units = {});

/// What is done in the same visit, a sentence each.
[[nodiscard]] std::vector<std::string> assistant_extras(const Instruction& said, Units units = {});

/// What has to be known by heart before a first round, a sentence each: what the words mean, when
/// to stop feeding, what not to do.
[[nodiscard]] const std::vector<std::string>& assistant_basics();

}  // namespace rackside
