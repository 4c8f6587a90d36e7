#pragma once

#include <cctype>
#include <string>
#include <string_view>

namespace rackside::kiosk {

/// A to Z in lower case; letters of other alphabets stay as they are.
[[nodiscard]] inline std::string lower(std::string_view text) {
  std::string result;
  for (const char c : text)
    result += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return result;
}

}  // namespace rackside::kiosk
