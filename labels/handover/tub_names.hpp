#pragma once
// A tub as it is named on the sheets: where it stands, its code, who lives in it.

#include <optional>
#include <string>
#include <string_view>

#include "core/code/code.hpp"
#include "core/event/details.hpp"

namespace rackside {

/// "shelf 2, position 14 · T4K7 9MWX · Haplocosmia himalayana"
[[nodiscard]] std::string tub_on_paper(const Place& place, const std::optional<Code>& code,
                                       std::string_view name);
/// "Rack A"; "Tubs without a rack".
[[nodiscard]] std::string rack_on_paper(std::string_view rack);

}  // namespace rackside
