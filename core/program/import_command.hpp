#pragma once

#include "core/program/command.hpp"

namespace rackside::program {

/// Takes over records from CSV files.
[[nodiscard]] Command add_import_command(Vocabulary& parser);

}  // namespace rackside::program
