#pragma once

#include <optional>
#include <string_view>

namespace rackside::interchange {

/// Where the first byte stands that is not part of well-formed UTF-8 (Unicode 15, table 3-7: no
/// overlong forms, no surrogates, nothing above U+10FFFF).
[[nodiscard]] std::optional<std::size_t> first_not_utf8(std::string_view text);

}  // namespace rackside::interchange
