#pragma once

#include "core/program/command.hpp"

namespace rackside::program {

/// What to do at each tub today, and in which order.
[[nodiscard]] Command add_today_command(Vocabulary& parser);

}  // namespace rackside::program
