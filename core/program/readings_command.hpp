#pragma once

#include "core/program/command.hpp"

namespace rackside::program {

/// Takes over what a sensor wrote into a file.
[[nodiscard]] Command add_readings_command(Vocabulary& parser);

}  // namespace rackside::program
