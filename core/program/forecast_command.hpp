#pragma once

#include "core/program/command.hpp"

namespace rackside::program {

/// Tells what is believed about every living animal's next moult, as a table or as JSON.
[[nodiscard]] Command add_forecast_command(Vocabulary& parser);

}  // namespace rackside::program
