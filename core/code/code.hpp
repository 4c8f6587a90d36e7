#pragma once
// The codes on tubs, cards, badges and shelves: seven characters and a check character.
//
// The alphabet has no two signs that look alike; the first character says what the code is for;
// the check character is ISO/IEC 7064 MOD 37,36, which catches every single wrong character and
// nearly every swap of neighbours. Upper case throughout, so that a QR symbol can use its
// alphanumeric mode.

#include <array>
#include <compare>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>

#include "core/values/result.hpp"

namespace rackside {

/// Without B, I, L, O, Q, S, U and Z, which are read as 8, 1, 1, 0, 0, 5, V and 2.
inline constexpr std::string_view code_alphabet = "0123456789ACDEFGHJKMNPRTVWXY";
inline constexpr std::size_t code_length = 8;
inline constexpr std::size_t code_body_length = 6;

enum class CodeKind { Enclosure, Person, Action, Shelf };

/// The first character of codes of this kind.
[[nodiscard]] char kind_character(CodeKind kind);
/// "tub", "badge", "action card", "shelf": for sentences.
[[nodiscard]] std::string_view kind_word(CodeKind kind);

/// A code whose check character holds. There is no way to have one that does not.
class Code {
 public:
  [[nodiscard]] CodeKind kind() const;
  [[nodiscard]] std::string_view text() const { return {characters_.data(), characters_.size()}; }
  /// The six characters between the kind and the check character.
  [[nodiscard]] std::string_view body() const { return text().substr(1, code_body_length); }
  /// "T4K7 9MWX": two groups of four, as it stands on labels for people.
  [[nodiscard]] std::string grouped() const;

  auto operator<=>(const Code&) const = default;

 private:
  Code() = default;
  friend Result<Code> make_code(CodeKind kind, std::string_view body);
  friend Result<Code> parse_code(std::string_view scanned);

  std::array<char, code_length> characters_{};
};

/// The code of `kind` with the six characters `body`. Errors: BadInput when `body` has another
/// length or a character outside the alphabet, or when its check character falls outside the
/// alphabet (about one body in four: such codes are never issued).
[[nodiscard]] Result<Code> make_code(CodeKind kind, std::string_view body);

/// What a reader delivered, taken as it is. Errors: NotOurs for anything that has not the shape of
/// one of our codes; BadInput when it has, but its check character does not fit. Content is
/// judged by shape only and never opened, run or stored.
[[nodiscard]] Result<Code> parse_code(std::string_view scanned);

/// What a person typed: lower case, blanks and hyphens are forgiven, and signs that look like one
/// of the alphabet's are read as that one. Errors as parse_code; an unfinished entry is BadInput.
[[nodiscard]] Result<Code> parse_typed_code(std::string_view typed);

}  // namespace rackside

template <>
struct std::hash<rackside::Code> {
  std::size_t operator()(const rackside::Code& code) const noexcept {
    return std::hash<std::string_view>{}(code.text());
  }
};
