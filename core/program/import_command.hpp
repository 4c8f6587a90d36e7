#pragma once

#include "core/program/command.hpp"

namespace rackside::program {

/// Takes over records from CSV files.
[[nodiscard]] Command add_import_command(CLI::App& parser);

}  // namespace rackside::program
