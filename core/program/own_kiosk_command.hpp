#pragma once

#include "core/program/command.hpp"

namespace rackside::program {

/// `rackside-log own-kiosk`
[[nodiscard]] Command add_own_kiosk_command(Vocabulary& parser);

}  // namespace rackside::program
