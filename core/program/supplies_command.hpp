#pragma once

#include "core/program/command.hpp"

namespace rackside::program {

/// Prey and water for the coming days.
[[nodiscard]] Command add_supplies_command(CLI::App& parser);

}  // namespace rackside::program
