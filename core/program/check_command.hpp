#pragma once

#include "core/program/command.hpp"

namespace rackside::program {

/// Looks whether the log is whole.
[[nodiscard]] Command add_check_command(Vocabulary& parser);

}  // namespace rackside::program
