#include "core/event/signs.hpp"

#include <fmt/format.h>

namespace rackside {
namespace {

constexpr std::array<std::string_view, all_signs.size()> words{
    "dark abdomen",     "plump abdomen", "sluggish",    "sealed in",          "stretched",
    "brighter colours", "active again",  "on its back", "shrivelled abdomen",
};

std::string_view trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(' ');
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(' ') - first + 1);
}

}  // namespace

std::string_view sign_word(Sign sign) { return words[static_cast<std::size_t>(sign)]; }

std::optional<Sign> sign_from_word(std::string_view word) {
  for (const Sign sign : all_signs)
    if (sign_word(sign) == word) return sign;
  return std::nullopt;
}

std::vector<Sign> SignSet::signs() const {
  std::vector<Sign> list;
  for (const Sign sign : all_signs)
    if (has(sign)) list.push_back(sign);
  return list;
}

std::string format_signs(SignSet signs) {
  std::string text;
  for (const Sign sign : signs.signs()) {
    if (!text.empty()) text += "; ";
    text += sign_word(sign);
  }
  return text;
}

Result<SignSet> parse_signs(std::string_view text) {
  SignSet set;
  while (!text.empty()) {
    const auto end = std::min(text.find(';'), text.size());
    const std::string_view word = trimmed(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
    if (word.empty()) continue;
    const auto sign = sign_from_word(word);
    if (!sign)
      return failure(ErrorKind::BadInput, fmt::format("\"{}\" is not a sign; the signs are: {}",
                                                      word, fmt::join(words, ", ")));
    set.insert(*sign);
  }
  return set;
}

}  // namespace rackside
