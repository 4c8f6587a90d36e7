#include "core/code/check_character.hpp"

namespace rackside {
namespace {

constexpr int modulus = 36;

int value_of(char c) {
  if (c >= '0' && c <= '9') return c - '0';
  if (c >= 'A' && c <= 'Z') return c - 'A' + 10;
  return -1;
}

char character_of(int value) {
  return static_cast<char>(value < 10 ? '0' + value : 'A' + value - 10);
}

}  // namespace

std::optional<char> check_character(std::string_view text) {
  if (text.empty()) return std::nullopt;
  int product = modulus;
  for (const char c : text) {
    const int value = value_of(c);
    if (value < 0) return std::nullopt;
    int sum = (product + value) % modulus;
    if (sum == 0) sum = modulus;
    product = sum * 2 % (modulus + 1);
  }
  // The check character brings the last sum to 1 modulo 36.
  return character_of((modulus + 1 - product % modulus) % modulus);
}

bool check_character_holds(std::string_view text) {
  return text.size() >= 2 && check_character(text.substr(0, text.size() - 1)) == text.back();
}

}  // namespace rackside
