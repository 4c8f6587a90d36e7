#pragma once

#include "core/program/command.hpp"

namespace rackside::program {

/// Writes the records as CSV files.
[[nodiscard]] Command add_export_command(Vocabulary& parser);

}  // namespace rackside::program
