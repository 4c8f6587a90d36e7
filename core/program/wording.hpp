#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace rackside::program {

/// "1 animal", "12 animals".
[[nodiscard]] std::string counted(std::int64_t count, std::string_view what);

}  // namespace rackside::program
