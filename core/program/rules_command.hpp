#pragma once

#include "core/program/command.hpp"

namespace rackside::program {

/// The rules of care as they hold for the collection, a species or an animal, and setting one.
[[nodiscard]] Command add_rules_command(Vocabulary& parser);

}  // namespace rackside::program
