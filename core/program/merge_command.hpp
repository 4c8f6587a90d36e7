#pragma once

#include "core/program/command.hpp"

namespace rackside::program {

/// Takes over what another kiosk recorded.
[[nodiscard]] Command add_merge_command(Vocabulary& parser);

}  // namespace rackside::program
