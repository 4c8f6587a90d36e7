#pragma once
// What a stand-in can record at a tub: the few things that can come of what was asked, and no more.

#include <vector>

#include "core/action/action.hpp"
#include "core/care/instruction.hpp"

namespace rackside {

/// Two to four, the likeliest first. One of them always answers what was asked; none is a keeper's.
[[nodiscard]] std::vector<Action> assistant_actions(const Instruction& said);

}  // namespace rackside
