#pragma once

#include <string>

namespace rackside::kiosk {

/// Without the blanks at its ends.
[[nodiscard]] inline std::string trimmed(std::string text) {
  text.erase(0, text.find_first_not_of(' '));
  text.erase(text.find_last_not_of(' ') + 1);
  return text;
}

}  // namespace rackside::kiosk
