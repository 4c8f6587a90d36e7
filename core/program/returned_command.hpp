#pragma once

#include "core/program/command.hpp"

namespace rackside::program {

/// What was done and not done while somebody stood in.
[[nodiscard]] Command add_returned_command(Vocabulary& parser);

}  // namespace rackside::program
