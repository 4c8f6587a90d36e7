#include "core/interchange/refusal.hpp"

#include <fmt/format.h>

namespace rackside::interchange {

std::string At::text() const {
  std::string where = file;
  if (line > 0) where += fmt::format(", line {}", line);
  if (!column.empty()) where += fmt::format(", column {}", column);
  return where;
}

void refuse(const At& at, const std::string& reason) {
  throw Refusal{{ErrorKind::BadInput, reason + " Nothing was taken over.", at.text()}};
}

}  // namespace rackside::interchange
