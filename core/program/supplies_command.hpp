#pragma once

#include "core/program/command.hpp"

namespace rackside::program {

/// Prey and water for the coming days.
[[nodiscard]] Command add_supplies_command(Vocabulary& parser);

}  // namespace rackside::program
