#include "core/interchange/utf8.hpp"

#include <cstdint>

namespace rackside::interchange {
namespace {

struct Form {
  std::uint8_t first_low, first_high;    // of the first byte
  std::uint8_t second_low, second_high;  // of the second
  std::size_t length;
};

constexpr Form forms[]{
    {0x00, 0x7F, 0, 0, 1},       {0xC2, 0xDF, 0x80, 0xBF, 2}, {0xE0, 0xE0, 0xA0, 0xBF, 3},
    {0xE1, 0xEC, 0x80, 0xBF, 3}, {0xED, 0xED, 0x80, 0x9F, 3}, {0xEE, 0xEF, 0x80, 0xBF, 3},
    {0xF0, 0xF0, 0x90, 0xBF, 4}, {0xF1, 0xF3, 0x80, 0xBF, 4}, {0xF4, 0xF4, 0x80, 0x8F, 4},
};

bool within(char c, std::uint8_t low, std::uint8_t high) {
  const auto byte = static_cast<std::uint8_t>(c);
  return low <= byte && byte <= high;
}

// The length of the character at the front; 0 when there is none.
std::size_t character_length(std::string_view text) {
  for (const Form& form : forms) {
    if (!within(text[0], form.first_low, form.first_high)) continue;
    if (text.size() < form.length) return 0;
    if (form.length > 1 && !within(text[1], form.second_low, form.second_high)) return 0;
    for (std::size_t i = 2; i < form.length; ++i)
      if (!within(text[i], 0x80, 0xBF)) return 0;
    return form.length;
  }
  return 0;
}

}  // namespace

std::optional<std::size_t> first_not_utf8(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t length = character_length(text.substr(at));
    if (length == 0) return at;
    at += length;
  }
  return std::nullopt;
}

}  // namespace rackside::interchange
