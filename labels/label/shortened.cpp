#include "labels/label/shortened.hpp"

#include <array>
#include <cstdint>
#include <optional>

namespace rackside {
namespace {

constexpr std::string_view replacement = "\xEF\xBF\xBD";
constexpr std::string_view ellipsis = "\xE2\x80\xA6";

struct Letter {
  char32_t point;
  std::size_t bytes;
};

int following_bytes(unsigned char lead) {
  if (lead < 0x80) return 0;
  if (lead >= 0xC2 && lead < 0xE0) return 1;
  if (lead >= 0xE0 && lead < 0xF0) return 2;
  if (lead >= 0xF0 && lead < 0xF5) return 3;
  return -1;
}

// The first code point of `text`, which is not empty; none when it is not UTF-8 (RFC 3629).
std::optional<Letter> first_point(std::string_view text) {
  const auto lead = static_cast<unsigned char>(text[0]);
  const int following = following_bytes(lead);
  if (following < 0 || text.size() < static_cast<std::size_t>(following) + 1) return std::nullopt;
  char32_t point = following == 0 ? lead : lead & (0x3Fu >> following);
  for (int i = 1; i <= following; ++i) {
    const auto byte = static_cast<unsigned char>(text[static_cast<std::size_t>(i)]);
    if ((byte & 0xC0u) != 0x80u) return std::nullopt;
    point = point << 6 | (byte & 0x3Fu);
  }
  constexpr std::array<char32_t, 4> least{0, 0x80, 0x800, 0x10000};
  const bool surrogate = point >= 0xD800 && point < 0xE000;
  if (point < least[static_cast<std::size_t>(following)] || surrogate || point > 0x10FFFF)
    return std::nullopt;
  return Letter{point, static_cast<std::size_t>(following) + 1};
}

// Marks that stand on the letter before them: combining diacritics, Hebrew and Arabic points,
// Devanagari and Thai vowel signs, joiners, variation selectors.
bool belongs_to_letter_before(char32_t point) {
  constexpr std::array<std::pair<char32_t, char32_t>, 13> ranges{{{0x0300, 0x036F},
                                                                  {0x0483, 0x0489},
                                                                  {0x0591, 0x05C7},
                                                                  {0x0610, 0x061A},
                                                                  {0x064B, 0x065F},
                                                                  {0x093A, 0x094D},
                                                                  {0x0E31, 0x0E3A},
                                                                  {0x1AB0, 0x1AFF},
                                                                  {0x1DC0, 0x1DFF},
                                                                  {0x200C, 0x200D},
                                                                  {0x20D0, 0x20FF},
                                                                  {0xFE00, 0xFE0F},
                                                                  {0xFE20, 0xFE2F}}};
  for (const auto& [first, last] : ranges)
    if (point >= first && point <= last) return true;
  return false;
}

// Line breaks and what turns the direction of the text around it.
bool is_control(char32_t point) {
  return point < 0x20 || (point >= 0x7F && point < 0xA0) || point == 0x2028 || point == 0x2029 ||
         (point >= 0x202A && point <= 0x202E) || (point >= 0x2066 && point <= 0x2069);
}

bool is_lower(char c) { return c >= 'a' && c <= 'z'; }
bool is_upper(char c) { return c >= 'A' && c <= 'Z'; }

std::string trimmed(const std::string& text) {
  const auto first = text.find_first_not_of(' ');
  if (first == std::string::npos) return {};
  return text.substr(first, text.find_last_not_of(' ') - first + 1);
}

}  // namespace

std::string one_line(std::string_view text) {
  std::string line;
  while (!text.empty()) {
    const auto letter = first_point(text);
    if (!letter)
      line += replacement;
    else if (is_control(letter->point))
      line += ' ';
    else
      line += text.substr(0, letter->bytes);
    text.remove_prefix(letter ? letter->bytes : 1);
  }
  return trimmed(line);
}

std::string abbreviated_species(std::string_view species) {
  const auto blank = species.find(' ');
  const bool is_binomial = blank != std::string_view::npos && blank >= 2 && is_upper(species[0]) &&
                           is_lower(species[1]) && blank + 1 < species.size() &&
                           is_lower(species[blank + 1]);
  if (!is_binomial) return std::string(species);
  return std::string(1, species[0]) + "." + std::string(species.substr(blank));
}

std::size_t letter_count(std::string_view text) {
  std::size_t count = 0;
  while (!text.empty()) {
    const auto letter = first_point(text);
    if (!letter || !belongs_to_letter_before(letter->point)) ++count;
    text.remove_prefix(letter ? letter->bytes : 1);
  }
  return count;
}

std::string cut_after(std::string_view text, std::size_t letters) {
  std::size_t taken = 0;
  std::size_t count = 0;
  while (taken < text.size()) {
    const auto letter = first_point(text.substr(taken));
    const bool mark = letter && belongs_to_letter_before(letter->point);
    if (!mark && count++ == letters) break;
    taken += letter ? letter->bytes : 1;
  }
  std::string kept = trimmed(std::string(text.substr(0, taken)));
  return taken == text.size() ? kept : kept.append(ellipsis);
}

}  // namespace rackside
