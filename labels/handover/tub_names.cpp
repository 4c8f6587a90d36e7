#include "labels/handover/tub_names.hpp"

#include <fmt/format.h>

#include "core/collection/place.hpp"

namespace rackside {

std::string tub_on_paper(const Place& place, const std::optional<Code>& code,
                         std::string_view name) {
  const std::string where = format_place({"", place.shelf, place.position});
  return fmt::format("{}{}{} · {}", where, where.empty() ? "" : " · ",
                     code ? code->grouped() : "no tub", name);
}

std::string rack_on_paper(std::string_view rack) {
  return rack.empty() ? "Tubs without a rack" : fmt::format("Rack {}", rack);
}

}  // namespace rackside
