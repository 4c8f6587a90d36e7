#pragma once

#include "core/program/command.hpp"

namespace rackside::program {

/// Copies the log while it is in use.
[[nodiscard]] Command add_backup_command(Vocabulary& parser);

}  // namespace rackside::program
