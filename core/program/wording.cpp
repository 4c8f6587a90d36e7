#include "core/program/wording.hpp"

#include <fmt/format.h>

namespace rackside::program {

std::string counted(std::int64_t count, std::string_view what) {
  return fmt::format("{} {}{}", count, what, count == 1 ? "" : "s");
}

}  // namespace rackside::program
