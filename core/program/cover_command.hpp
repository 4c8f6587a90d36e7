#pragma once

#include "core/program/command.hpp"

namespace rackside::program {

/// Who stands in, whom to call, the plan of the absence.
[[nodiscard]] Command add_cover_command(Vocabulary& parser);

}  // namespace rackside::program
