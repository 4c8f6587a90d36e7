#pragma once
// What a keeper can see on an animal between moults. The words are the interchange files' words.

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/values/result.hpp"

namespace rackside {

enum class Sign : std::uint8_t {
  DarkAbdomen,  // the bald patch has turned dark and glossy
  PlumpAbdomen,
  Sluggish,
  SealedIn,   // retreat closed with web or soil
  Stretched,  // long, stretched posture
  BrighterColours,
  ActiveAgain,  // after weeks of hiding
  OnItsBack,
  ShrivelledAbdomen,  // no sign of a moult: mostly thirst
};

inline constexpr std::array all_signs{
    Sign::DarkAbdomen, Sign::PlumpAbdomen, Sign::Sluggish,
    Sign::SealedIn,    Sign::Stretched,    Sign::BrighterColours,
    Sign::ActiveAgain, Sign::OnItsBack,    Sign::ShrivelledAbdomen,
};

[[nodiscard]] std::string_view sign_word(Sign sign);
[[nodiscard]] std::optional<Sign> sign_from_word(std::string_view word);

/// A set of signs as one value.
class SignSet {
 public:
  constexpr SignSet() = default;
  constexpr SignSet(std::initializer_list<Sign> signs) {
    for (const Sign sign : signs) insert(sign);
  }
  constexpr void insert(Sign sign) { bits_ = static_cast<std::uint16_t>(bits_ | bit(sign)); }
  [[nodiscard]] constexpr bool has(Sign sign) const { return (bits_ & bit(sign)) != 0; }
  [[nodiscard]] constexpr bool empty() const { return bits_ == 0; }
  /// What is in this set or in `other`.
  [[nodiscard]] constexpr SignSet with(SignSet other) const {
    other.bits_ = static_cast<std::uint16_t>(other.bits_ | bits_);
    return other;
  }
  [[nodiscard]] std::vector<Sign> signs() const;

  bool operator==(const SignSet&) const = default;

 private:
  static constexpr std::uint16_t bit(Sign sign) {
    return static_cast<std::uint16_t>(1u << static_cast<unsigned>(sign));
  }
  std::uint16_t bits_ = 0;
};

/// "dark abdomen; sealed in"; empty for none.
[[nodiscard]] std::string format_signs(SignSet signs);
/// Words with ";" between them. Errors: BadInput names the word that is no sign.
[[nodiscard]] Result<SignSet> parse_signs(std::string_view text);

}  // namespace rackside
