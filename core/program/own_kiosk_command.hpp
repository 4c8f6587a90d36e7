#pragma once

#include "core/program/command.hpp"

namespace rackside::program {

/// Makes a copied log a kiosk of its own.
[[nodiscard]] Command add_own_kiosk_command(CLI::App& parser);

}  // namespace rackside::program
