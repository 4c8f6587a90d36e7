#pragma once

#include "core/program/command.hpp"

namespace rackside::program {

/// Who stands in, whom to call, the plan of the absence.
[[nodiscard]] Command add_cover_command(CLI::App& parser);

}  // namespace rackside::program
