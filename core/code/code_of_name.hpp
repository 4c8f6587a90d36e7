#pragma once
// Codes for what has a name of its own: a shelf, a person.

#include <string_view>

#include "core/code/code.hpp"

namespace rackside {

/// The code of `kind` that belongs to `name`: the same name always gives the same code, on every
/// kiosk and without a log, so a card can be printed again and a scanned one be told by comparing
/// it with the codes of the names that are known. It is no secret: who knows the name can make it.
/// Two names share a code with a chance of 1 in 375 million.
[[nodiscard]] Code code_of_name(CodeKind kind, std::string_view name);

/// A shelf of a rack; the shelf may be empty for a rack that has none.
[[nodiscard]] Code code_of_shelf(std::string_view rack, std::string_view shelf);

}  // namespace rackside
