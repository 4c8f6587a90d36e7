#pragma once
// ISO/IEC 7064:2003, hybrid system MOD 37,36: one check character from 0-9 and A-Z over a text of
// the same characters.

#include <optional>
#include <string_view>

namespace rackside {

/// The check character of `text`; none when `text` is empty or holds anything but 0-9 and A-Z.
[[nodiscard]] std::optional<char> check_character(std::string_view text);

/// Whether the last character of `text` is the check character of those before it.
[[nodiscard]] bool check_character_holds(std::string_view text);

}  // namespace rackside
